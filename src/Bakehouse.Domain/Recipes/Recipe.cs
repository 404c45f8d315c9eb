namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Methods;

/// <summary>What a recipe makes.</summary>
public enum RecipeKind
{
    /// <summary>A batter that is baked.</summary>
    Sponge,

    /// <summary>What goes between the layers; buttercream is the coat, too.</summary>
    Filling,

    /// <summary>What colours a coat.</summary>
    Colour,

    /// <summary>What goes on top of a tier.</summary>
    Decoration,

    /// <summary>What touches the cake without being part of a recipe: grease and dust for tins, glue of a board.</summary>
    Kit,

    /// <summary>Made only to go into other recipes.</summary>
    Part,
}

/// <summary>How the eggs of a recipe are treated. Who may eat which, local rules decide.</summary>
public enum EggMethod
{
    /// <summary>There is no egg in it, or nobody has said yet.</summary>
    None,

    /// <summary>Heated through: 71 °C or more.</summary>
    Cooked,

    /// <summary>Bought pasteurised, not heated further.</summary>
    Pasteurised,

    /// <summary>Raw.</summary>
    Raw,
}

/// <summary>Where something is kept.</summary>
public enum KeepPlace
{
    /// <summary>In the room, wrapped.</summary>
    Room,

    /// <summary>In the fridge.</summary>
    Fridge,

    /// <summary>In the freezer.</summary>
    Freezer,
}

/// <summary>So long it keeps there. The rules of the place and the owner's own tests come first.</summary>
/// <param name="Hours">1 and up.</param>
public sealed record KeepTime(KeepPlace Place, int Hours);

/// <summary>Baking: degrees of an oven without a fan, and minutes by height and size.</summary>
/// <param name="Heat">Degrees Celsius, 50 to 300.</param>
public sealed record Baking(int Heat, IReadOnlyList<BakeTime> Times);

/// <summary>One row of a recipe: so much of an ingredient, or of another recipe.</summary>
/// <param name="Of">Id of the ingredient or recipe.</param>
/// <param name="IsRecipe">True if it is another recipe.</param>
/// <param name="Amount">More than zero.</param>
/// <param name="Measure">"g", or a kitchen measure; a recipe goes in by grams alone.</param>
public sealed record RecipeLine(string Of, bool IsRecipe, decimal Amount, string Measure = RecipeLine.Gram)
{
    /// <summary>The measure that every line may have.</summary>
    public const string Gram = "g";

    /// <summary>So many grams of an ingredient.</summary>
    public static RecipeLine Grams(string ingredient, decimal grams) => new(ingredient, false, grams);

    /// <summary>So many kitchen measures of an ingredient.</summary>
    public static RecipeLine Kitchen(string ingredient, decimal amount, string measure) => new(ingredient, false, amount, measure);

    /// <summary>So many grams of another recipe.</summary>
    public static RecipeLine Part(string recipe, decimal grams) => new(recipe, true, grams);
}

/// <summary>How something is made. Immutable; a change is a new version.</summary>
/// <param name="Id">Short, lower case. A sponge's and a filling's is the one that stands in orders.</param>
/// <param name="Version">1 and up; each saved change adds one.</param>
/// <param name="Lines">In the order of work.</param>
/// <param name="Eggs">How eggs are treated.</param>
/// <param name="Bakes">Null if it is not baked.</param>
/// <param name="Keeps">By place; a place without a row is not for it.</param>
/// <param name="LossPercent">What it loses while it is made, e.g. 10 in the oven; 0 to 50.</param>
public sealed record Recipe(
    string Id, int Version, string Name, RecipeKind Kind, IReadOnlyList<RecipeLine> Lines, EggMethod Eggs, Baking? Bakes, IReadOnlyList<KeepTime> Keeps, decimal LossPercent = 0)
{
    /// <summary>What the kitchen must know besides; may be empty.</summary>
    public string Notes { get; init; } = "";
}
