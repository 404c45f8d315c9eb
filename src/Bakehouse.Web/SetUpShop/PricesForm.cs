namespace Bakehouse.Web.SetUpShop;

/// <summary>What the shop's hours, things and cakes cost, as typed; "" is not said yet.</summary>
public sealed class PricesForm
{
    public string Wage { get; set; } = "";

    public string Overhead { get; set; } = "";

    public string Orders { get; set; } = "";

    /// <summary>Percent on cost.</summary>
    public string MarkUp { get; set; } = "";

    /// <summary>Percent on cost that no cake goes under.</summary>
    public string LeastMarkUp { get; set; } = "";

    /// <summary>Prices end on a multiple of it.</summary>
    public string Step { get; set; } = "1";

    public string Support { get; set; } = "";

    public string Rod { get; set; } = "";

    /// <summary>Case, insert and box for one cupcake.</summary>
    public string CupcakePack { get; set; } = "";

    /// <summary>What one cupcake is sold for.</summary>
    public string Cupcake { get; set; } = "";

    /// <summary>"6 = 0.45; 8 = 0.60", sizes in the shop's unit.</summary>
    public string Boards { get; set; } = "";

    public string Drums { get; set; } = "";

    public string Boxes { get; set; } = "";

    /// <summary>No order costs less.</summary>
    public string Least { get; set; } = "";

    /// <summary>A portion by finish and cut.</summary>
    public IList<PortionPriceForm> Portions { get; set; } = [];

    /// <summary>Percent that medium decoration adds.</summary>
    public string Medium { get; set; } = "";

    /// <summary>Percent that rich decoration adds.</summary>
    public string Rich { get; set; } = "";

    /// <summary>Each tier of foam.</summary>
    public string FalseTier { get; set; } = "";

    /// <summary>Each tier with a drip.</summary>
    public string Drip { get; set; } = "";

    /// <summary>Percent that sugar paste adds.</summary>
    public string Paste { get; set; } = "";

    public IList<PackPriceForm> Packs { get; set; } = [];
}

/// <summary>A row of the price list as typed.</summary>
public sealed class PortionPriceForm
{
    public Domain.Orders.Finish Finish { get; set; }

    public string Dessert { get; set; } = "";

    public string Coffee { get; set; } = "";
}

/// <summary>The pack of an ingredient as typed.</summary>
public sealed class PackPriceForm
{
    public string Ingredient { get; set; } = "";

    public string Name { get; set; } = "";

    public string Grams { get; set; } = "";

    public string Price { get; set; } = "";
}
