namespace Bakehouse.Web.Tests.TheRecipes;

using System.Text;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Recipes;
using Bakehouse.Web.Access;
using Bakehouse.Web.TheRecipes.Files;
using Bunit;
using Microsoft.Extensions.DependencyInjection;

/// <summary>Recipes and ingredients out to files and in again; whatever is wrong with a file is told by row with what to do.</summary>
public sealed class FilesTests : BunitContext
{
    private const string Flour = "plain-flour,Plain flour,wheat flour,flour,,0,cup = 125,,\"USDA SR28, NDB 20081\",L1,wheat,,milk; egg,0";
    private const string Dough = "dough,Dough,part,plain-flour,ingredient,100,g,,,,,,,,";

    private readonly BookInHand book = new();

    public FilesTests()
    {
        book.State = book.State with { Cookbook = Starter.Sample };
        Services.AddSingleton<IBook>(book);
    }

    private static readonly HashSet<string> Knows = [.. AllergenRules.Usual.All.Select(a => a.Id)];

    private static string Ingredients(params string[] rows) => string.Join("\r\n", [string.Join(',', IngredientsFile.Heads), .. rows]);

    private static string Recipes(params string[] rows) => string.Join("\r\n", [string.Join(',', RecipesFile.Heads), .. rows]);

    /// <summary>What is told in the end: what can't be read, else what the checks of the cookbook say, by row.</summary>
    private static IReadOnlyList<Problem> Told(string? ingredients, string? recipes, Cookbook? into = null)
    {
        var stands = into ?? Cookbook.Empty;
        var read = FilesRead.Of(ingredients, recipes, stands);
        return read.Problems.Count > 0 ? read.Problems : [.. CookbookChecks.Problems(stands.With(read.Ingredients, read.Recipes), Knows).Select(read.ByRow)];
    }

    private static void One(Problem problem, string where, string fix)
    {
        Assert.Equal(where, problem.Where);
        Assert.Contains(fix, problem.Try, StringComparison.Ordinal);
        Assert.True(problem.Value.Length <= 80);
    }

    /// <summary>RFC 4180, section 2, its own examples: rules 1 to 7.</summary>
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|b\r\nbb|ccc/zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa|b\"bb|ccc")]
    [InlineData("a,,\n\nb,c,", "a||/b|c|")]
    public void Fields_are_read_as_the_standard_has_them(string text, string fields) =>
        Assert.Equal(fields, string.Join('/', Csv.Read(text).Rows!.Select(r => string.Join('|', r.Fields))));

    /// <summary>OWASP's list of what a spreadsheet takes for a formula: = + - @ tab and carriage return.</summary>
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("=HYPERLINK(\"http://a.example\",\"sugar\")", "\"'=HYPERLINK(\"\"http://a.example\"\",\"\"sugar\"\")\"")]
    [InlineData("+44", "'+44")]
    [InlineData("-5", "'-5")]
    [InlineData("@sum", "'@sum")]
    [InlineData("\tsugar", "'\tsugar")]
    [InlineData("\rsugar", "\"'\rsugar\"")]
    [InlineData("'=1", "''=1")]
    [InlineData("'quoted'", "'quoted'")]
    [InlineData("a=b", "a=b")]
    public void What_a_spreadsheet_would_run_is_written_as_text_and_read_as_it_was(string field, string written)
    {
        var text = Csv.Write([["name", field]]);
        Assert.Equal($"name,{written}\r\n", text);
        Assert.Equal(["name", field], Assert.Single(Csv.Read(text).Rows!).Fields);
    }

    [Theory]
    [InlineData("a,b\r\nc,d\"e", 2)]
    [InlineData("a,b\r\nc,\"d\" e", 2)]
    [InlineData("a,b\r\nc,\"d\r\ne,f", 2)]
    public void A_quotation_mark_that_stands_wrong_is_told_with_its_line(string text, int line) => Assert.Equal((null, line), Csv.Read(text));

    [Fact]
    public void What_goes_out_comes_in_again_just_as_it_was()
    {
        var odd = Starter.Sample.With(
            [Starter.Sample.Ingredient("butter")! with { Name = "Butter, \"best\"\r\nsalted; =[x]\\", Weights = [new KitchenWeight("cup; heaped = [so]", 250.125m)], GramsPerMillilitre = 0.911m, MadeOf = [new Component("cream [fresh]; 99\\", ["milk", "soya"])] }],
            [Starter.Sample.Recipe("lemon")! with { Notes = "First, \"slowly\".\r\nThen not." }]);
        var read = FilesRead.Of(IngredientsFile.Write(odd), RecipesFile.Write(odd), Cookbook.Empty);
        Assert.Empty(read.Problems);
        Assert.Equal(odd.Recipes.Select(r => (r.Id, r.Name, r.Kind, r.Eggs, r.LossPercent, r.Notes)), read.Recipes.Select(r => (r.Id, r.Name, r.Kind, r.Eggs, r.LossPercent, r.Notes)));
        Assert.All(odd.Recipes.Zip(read.Recipes), r => Assert.True(r.First.Lines.SequenceEqual(r.Second.Lines) && r.First.Keeps.OrderBy(k => k.Place).SequenceEqual(r.Second.Keeps) && (r.First.Bakes?.Times ?? []).SequenceEqual(r.Second.Bakes?.Times ?? [])));
        Assert.All(odd.Ingredients.Zip(read.Ingredients), i => Assert.True(
            i.First.Weights.SequenceEqual(i.Second.Weights) && i.First.Name == i.Second.Name && i.First.GramsPerMillilitre == i.Second.GramsPerMillilitre && i.First.AlcoholPercent == i.Second.AlcoholPercent
            && i.First.MadeOf.Select(c => (c.Label, string.Join(' ', c.Has))).SequenceEqual(i.Second.MadeOf.Select(c => (c.Label, string.Join(' ', c.Has)))) && i.First.InUse!.Facts!.Says(i.Second.InUse!.Facts)));
        var again = FilesRead.Of(IngredientsFile.Write(odd), RecipesFile.Write(odd), odd);
        Assert.Equal((0, 0, odd.Ingredients.Count + odd.Recipes.Count), (again.New, again.Changed, again.AsTheyAre));
    }

    [Fact]
    public void A_changed_row_is_one_change_with_the_version_of_the_book_and_its_other_packs_stay()
    {
        var read = FilesRead.Of(Ingredients(Flour), null, Starter.Sample);
        var flour = Assert.Single(read.Ingredients);
        Assert.Equal((0, 1, 1), (read.New, read.Changed, flour.Version));
        Assert.Equal(["L1", "sample"], flour.Packs.Select(p => p.Lot));
        Assert.Equal((AllergenStatus.Has, AllergenStatus.HasNot, AllergenStatus.Unknown), (flour.InUse!.Facts!.Of("wheat"), flour.InUse.Facts.Of("egg"), flour.InUse.Facts.Of("soya")));
        Assert.Null(FilesRead.Of(Ingredients($"salt,Salt{new string(',', 12)}"), null, Cookbook.Empty).Ingredients[0].InUse!.Facts);
    }

    [Fact]
    public void Wrong_columns_are_named_with_those_that_there_are()
    {
        var told = Told(null, $"recipe,naam,{string.Join(',', RecipesFile.Heads.Skip(2))},notes\r\n{Dough},");
        Assert.Equal(["name", "naam", "notes"], told.Select(p => p.Value));
        Assert.All(told, p => Assert.Equal("Recipes: Row 1", p.Where));
        One(Assert.Single(Told($"{string.Join(';', IngredientsFile.Heads)}\r\na;b", null)), "Ingredients: Row 1", "Save it with commas");
        One(Assert.Single(Told(null, Recipes($"{Dough},more"))), "Recipes: Row 2", "a comma too many or too few");
        One(Assert.Single(Told("", null)), "Ingredients: File", "ingredient,name");
        One(Assert.Single(Told(null, Recipes("a,\"b"))), "Recipes: Row 2", "double those inside it");
    }

    [Fact]
    public void Decimal_commas_and_what_is_no_figure_are_told_and_never_guessed()
    {
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough.Replace("100,g", "\"12,5\",g", StringComparison.Ordinal)))), "Recipes: Row 2, amount", "Write 12.5 and 1650.");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough.Replace("100,g", "a lot,g", StringComparison.Ordinal)))), "Recipes: Row 2, amount", "Write digits");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough.Replace("100,g", ",g", StringComparison.Ordinal)))), "Recipes: Row 2, amount", "how much goes in");
        One(Assert.Single(Told(Ingredients(Flour.Replace("cup = 125", "\"cup = 1,5\"", StringComparison.Ordinal)), null)), "Ingredients: Row 2, measures", "decimals behind a point");
        One(Assert.Single(Told(null, Recipes("cake,Cake,sponge,x,recipe,1,g,,,177.5,8 in 5 cm = 35,,,,"))), "Recipes: Row 2, oven c", "without decimals");
        One(Assert.Single(Told(null, Recipes("cake,Cake,sponge,x,recipe,1,g,,,177,35 min,,,,"))), "Recipes: Row 2, minutes", "8 in 5 cm = 35");
    }

    [Fact]
    public void What_the_checks_of_the_cookbook_say_is_told_by_row()
    {
        One(Assert.Single(Told(Ingredients(Flour, Flour.Replace("plain-flour,Plain flour,wheat flour,flour,", "heavy,Heavy,x,flour,0", StringComparison.Ordinal)), null)), "Ingredients: Row 3, Heavy", "Weigh a level cup");
        One(Assert.Single(Told(Ingredients(Flour.Replace("L1,wheat", "L1,moon dust", StringComparison.Ordinal)), null)), "Ingredients: Row 2, Plain flour", "almonds");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough, "dough,,,dough,recipe,5,g,,,,,,,,"))), "Recipes: Row 2, Dough", "Take Dough out of Dough");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough, "dough,,,rye,ingredient,5,g,,,,,,,,"))), "Recipes: Row 3, Dough", "write it first");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough, "dough,,,plain-flour,ingredient,5,bucket,,,,,,,,"))), "Recipes: Row 3, Dough", "cup");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough.Replace(",part,", ",pancake,", StringComparison.Ordinal)))), "Recipes: Row 2, makes", "sponge, filling");
    }

    [Fact]
    public void Rows_that_say_two_things_are_told()
    {
        One(Assert.Single(Told(Ingredients(Flour, Flour), null)), "Ingredients: Row 3, ingredient", "Leave one of them.");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough, "dough,Batter,,plain-flour,ingredient,5,g,,,,,,,,"))), "Recipes: Row 3, name", "first row");
    }

    [Fact]
    public void A_megabyte_in_a_field_is_named_with_its_row_and_shown_short()
    {
        var long1 = new string('x', 1_048_576);
        One(Assert.Single(Told(Ingredients(Flour, Flour.Replace("plain-flour", "other", StringComparison.Ordinal).Replace("cup = 125", long1, StringComparison.Ordinal)), null)), "Ingredients: Row 3", "Shorten it.");
        One(Assert.Single(Told(Ingredients(Flour), Recipes(Dough + new string('y', 5000)))), "Recipes: Row 2, Dough", "Shorten it.");
    }

    [Fact]
    public void Nothing_is_written_before_it_was_seen_and_then_all_of_it()
    {
        var tray = Tray();
        Give(tray, 0, Ingredients(Flour));
        Assert.Contains("0 new, 1 changed, 0 as they are.", tray.Find(".preview").TextContent, StringComparison.Ordinal);
        Give(tray, 1, Recipes(Dough));
        Assert.Contains("1 new, 1 changed, 0 as they are.", tray.Find(".preview").TextContent, StringComparison.Ordinal);
        Assert.Empty(book.Heard);
        tray.Find("#file-why").Change("From the old folder");
        tray.FindAll("button").Single(b => b.TextContent == "Write all of it").Click();
        var written = Assert.IsType<WriteRecipes>(Assert.Single(book.Heard));
        Assert.Equal(("From the old folder", 1, 1), (written.Why, written.Ingredients.Count, written.Recipes.Count));
        Assert.Contains("All of it is written.", tray.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void With_one_bad_row_nothing_can_be_written()
    {
        var tray = Tray();
        Give(tray, 1, Recipes(Dough, "dough,,,plain-flour,ingredient,\"1,5\",g,,,,,,,,"));
        Assert.Contains("Row 3, amount", tray.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(tray.FindAll("button"));
        tray.FindComponents<Microsoft.AspNetCore.Components.Forms.InputFile>()[1].UploadFiles(InputFileContent.CreateFromBinary([0x72, 0xE9, 0x63], "old.csv"));
        Assert.Contains("The file is not written in UTF-8.", tray.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(book.Heard);
    }

    private IRenderedComponent<FilesTray> Tray() => Render<FilesTray>(p => p.AddCascadingValue(new Who("ines", "office")));

    private static void Give(IRenderedComponent<FilesTray> tray, int which, string text) =>
        tray.FindComponents<Microsoft.AspNetCore.Components.Forms.InputFile>()[which].UploadFiles(InputFileContent.CreateFromBinary(Encoding.UTF8.GetBytes(text), "our.csv"));
}
