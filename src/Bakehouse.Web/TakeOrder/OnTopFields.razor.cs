namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Dangers;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;

/// <summary>Flowers and things on top, as somebody types them.</summary>
public sealed partial class OnTopFields
{
    private static readonly IReadOnlyList<(ToppingUse Use, string Words)> Uses =
        [(ToppingUse.Edible, "Eaten"), (ToppingUse.ContactOnly, "Comes off before eating"), (ToppingUse.Never, "Never on food")];

    private ElementReference first;

    /// <summary>What is typed.</summary>
    [Parameter, EditorRequired]
    public OnTopForm Form { get; set; } = default!;

    /// <summary>Something was typed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>True if it was just unfolded: it comes into sight.</summary>
    [Parameter]
    public bool Comes { get; set; }

    private IReadOnlyList<string> Off => TakeOff.Of(Form.Drawn);

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && Comes)
        {
            await first.FocusAsync();
        }
    }

    private static string NameOf(ToppingForm topping) => Topping.Of(topping.Topping)?.Name ?? topping.Topping;

    /// <summary>The kinds that it may be; empty for what is one thing only.</summary>
    private static IReadOnlyList<Topping> KindsOf(ToppingForm topping) => Topping.Of(topping.Topping) is not { } chosen ? [] : chosen.KindOf.Length > 0 ? Topping.Of(chosen.KindOf)!.Kinds : chosen.Kinds;

    /// <summary>What can still be put on; several kinds of one thing may lie side by side.</summary>
    private IEnumerable<Topping> Choices(ToppingUse use) => Topping.All.Where(t => t.Use == use && t.KindOf.Length == 0 && Form.Toppings.All(f => f.Topping != t.Id));

    private static MarkKind MarkOf(ToppingForm topping) => Topping.Of(topping.Topping) switch { { Kinds.Count: > 0 } => MarkKind.NotKnown, var chosen => OfUse(chosen?.Use) };

    private static MarkKind OfUse(ToppingUse? use) => use switch { ToppingUse.Edible => MarkKind.InTime, ToppingUse.ContactOnly => MarkKind.Tight, _ => MarkKind.Late };

    private static string Says(ToppingForm topping) => Topping.Of(topping.Topping) switch
    {
        { Kinds.Count: > 0 } => "ask which: each is an allergen of its own.",
        { Use: ToppingUse.ContactOnly } => "comes off before eating.",
        { Use: ToppingUse.Edible, NeedsFridge: true } => "eaten; needs the fridge.",
        { Use: ToppingUse.Edible } => "eaten; sold as food.",
        { Why: var why } => $"never on food. {why}",
        null => "not known.",
    };

    private Task Flowers()
    {
        Form.Flowers = !Form.Flowers;
        if (Form.Flowers && Form.Kinds.Count == 0)
        {
            Form.Kinds.Add(new FlowerForm());
        }

        return Changed.InvokeAsync();
    }

    private Task Add()
    {
        Form.Kinds.Add(new FlowerForm());
        return Changed.InvokeAsync();
    }

    private Task Drop(FlowerForm kind)
    {
        Form.Kinds.Remove(kind);
        return Changed.InvokeAsync();
    }

    private Task Put(string topping)
    {
        if (topping.Length > 0)
        {
            Form.Toppings.Add(new ToppingForm { Topping = topping });
        }

        return Changed.InvokeAsync();
    }

    private Task Drop(ToppingForm topping)
    {
        Form.Toppings.Remove(topping);
        return Changed.InvokeAsync();
    }
}
