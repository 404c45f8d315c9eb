namespace Bakehouse.Web.SetUpShop;

using Bakehouse.Domain.Shops;

/// <summary>What is typed about the shop, as typed. Sizes in centimetres, inside.</summary>
public sealed class ShopForm
{
    /// <summary>The version that was read, 0 for none.</summary>
    public int Version { get; set; }

    public string Name { get; set; } = "";

    public string Zone { get; set; } = "Europe/London";

    public string Hours { get; set; } = "Tue-Sat 07:00-18:00";

    public string Country { get; set; } = "GB";

    public bool Inches { get; set; } = true;

    public bool Clock24 { get; set; } = true;

    public string Racks { get; set; } = "15";

    public string Benches { get; set; } = "2";

    public string Turntables { get; set; } = "2";

    /// <summary>"22:00": nobody's hands are planned after it; "" for no such hour.</summary>
    public string LastHands { get; set; } = "";

    /// <summary>"Sat 2, Sun 1": tiered cakes that leave on a day at most; "" for no cap.</summary>
    public string Caps { get; set; } = "";

    /// <summary>Small cakes a week by month: "6, May-Jul 10".</summary>
    public string SmallCakes { get; set; } = "";

    /// <summary>Hours for which a day is kept.</summary>
    public string KeepHours { get; set; } = "48";

    /// <summary>"21:00-06:00": when the bell keeps quiet about what can wait; "" for never.</summary>
    public string Quiet { get; set; } = "";

    /// <summary>What cakes are stacked with, by name.</summary>
    public string Supports { get; set; } = Stacking.Usual.Supports;

    public string TierBoard { get; set; } = Stacking.Usual.Board;

    public string Underlay { get; set; } = Stacking.Usual.Underlay;

    /// <summary>The owner's own limits.</summary>
    public LimitsForm Limits { get; set; } = new();

    /// <summary>How warm the places are, and whose food rules count.</summary>
    public ColdForm Cold { get; set; } = new();

    /// <summary>The owner's rules about allergens; null in what was typed before they could be, then they stay as they are.</summary>
    public AllergensForm? Allergens { get; set; }

    /// <summary>The shop's own figures for the build; null in what was typed before they could be, then they stay as they are.</summary>
    public FiguresForm? Figures { get; set; }

    /// <summary>The owner's own prices.</summary>
    public PricesForm Prices { get; set; } = new();

    public IList<HouseCakeForm> HouseCakes { get; set; } = [];

    public IList<PersonForm> People { get; set; } = [new() { Hours = "Tue-Sat 06:00-14:00", Skills = [.. Bakehouse.Domain.Shops.Skills.All] }];

    public IList<OvenForm> Ovens { get; set; } = [new()];

    public IList<BowlForm> Bowls { get; set; } = [new()];

    public IList<ShelfForm> Shelves { get; set; } =
    [
        new(), new() { Level = "2" }, new() { Level = "3" }, new() { Kind = ShelfKind.Freezer, Unit = "Freezer 1", Clear = "25" },
    ];
}

/// <summary>A house cake that stays, perhaps under another name.</summary>
public sealed class HouseCakeForm
{
    /// <summary>Its name in the book.</summary>
    public string Was { get; set; } = "";

    public string Name { get; set; } = "";
}

/// <summary>One person as typed.</summary>
public sealed class PersonForm
{
    /// <summary>"" until it is saved for the first time.</summary>
    public string Id { get; set; } = "";

    public string Name { get; set; } = "";

    public string Picture { get; set; } = "whisk";

    public Role Role { get; set; } = Role.Owner;

    public IList<string> Skills { get; set; } = [];

    public string Hours { get; set; } = "Tue-Sat 09:00-17:00";

    public string Overtime { get; set; } = "";
}

/// <summary>One oven as typed; a half-size fan oven to begin with (common practice, no source).</summary>
public sealed class OvenForm
{
    public string Id { get; set; } = "";

    public string Name { get; set; } = "Oven 1";

    public OvenKind Kind { get; set; }

    public string Decks { get; set; } = "3";

    public string Width { get; set; } = "46";

    public string Depth { get; set; } = "33";
}

/// <summary>One bowl as typed; a 7 litre mixer to begin with (common practice, no source).</summary>
public sealed class BowlForm
{
    public string Id { get; set; } = "";

    public string Name { get; set; } = "Bowl 1";

    public string Litres { get; set; } = "7";

    public string Batter { get; set; } = "2.2";

    public string Cream { get; set; } = "3";
}

/// <summary>One shelf as typed; an upright fridge to begin with (common practice, no source).</summary>
public sealed class ShelfForm
{
    public string Id { get; set; } = "";

    public ShelfKind Kind { get; set; }

    public string Unit { get; set; } = "Fridge 1";

    public string Level { get; set; } = "1";

    public string Width { get; set; } = "55";

    public string Depth { get; set; } = "60";

    public string Clear { get; set; } = "30";

    /// <summary>It can be pulled out, so that the one below it has more height.</summary>
    public bool PullsOut { get; set; }
}
