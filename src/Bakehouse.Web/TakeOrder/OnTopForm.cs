namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Dangers;

/// <summary>What goes on the finished cake, as typed.</summary>
public sealed class OnTopForm
{
    /// <summary>Fresh flowers are asked for.</summary>
    public bool Flowers { get; set; }

    public IList<FlowerForm> Kinds { get; set; } = [];

    public string Florist { get; set; } = "";

    public IList<ToppingForm> Toppings { get; set; } = [];

    /// <summary>True as soon as something is asked for.</summary>
    public bool IsAsked => Flowers || Toppings.Count > 0;

    /// <summary>The form filled with what an order has.</summary>
    public static OnTopForm Of(OnTop? top) => new()
    {
        Flowers = top?.Flowers is not null,
        Kinds = [.. top?.Flowers?.Kinds.Select(k => new FlowerForm { Species = k.Species, Put = k.Put, GrownToEat = k.GrownToEat, Stems = Say(k.Stems) }) ?? []],
        Florist = top?.Flowers?.Florist ?? "",
        Toppings = [.. top?.Toppings.Select(t => new ToppingForm { Topping = t.Topping, Count = Say(t.Count) }) ?? []],
    };

    /// <summary>As the order has it; null if nothing is asked for.</summary>
    /// <param name="count">Reads a count, and writes down what can't be read.</param>
    internal OnTop? Read(Func<string, string, int> count) => !IsAsked ? null : new OnTop(
        Flowers ? new FreshFlowers([.. Kinds.Select(k => new OrderedFlower(k.Species.Trim(), k.Put, k.GrownToEat, count(k.Stems, "stems")))], Florist.Trim()) : null,
        [.. Toppings.Select(t => new OrderedTopping(t.Topping, count(t.Count, "pieces")))]);

    /// <summary>The same for drawing and asking: a count that can't be read stands for one.</summary>
    internal OnTop? Drawn => Read((text, _) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 1);

    private static string Say(int count) => count.ToString(CultureInfo.InvariantCulture);
}

/// <summary>One kind of flower as typed.</summary>
public sealed class FlowerForm
{
    public string Species { get; set; } = "";

    public FlowerPut Put { get; set; }

    public bool GrownToEat { get; set; }

    public string Stems { get; set; } = "1";
}

/// <summary>One thing on top as typed.</summary>
public sealed class ToppingForm
{
    public string Topping { get; set; } = "";

    public string Count { get; set; } = "1";
}

/// <summary>Who will eat, as ticked.</summary>
public sealed class EatersForm
{
    public bool SmallChildren { get; set; }

    public bool Vulnerable { get; set; }

    /// <summary>The questions that somebody has asked, in their words.</summary>
    public string Asked { get; set; } = "";

    public bool RawEggAgreed { get; set; }

    /// <summary>True as soon as somebody is named.</summary>
    public bool IsTold => SmallChildren || Vulnerable;

    /// <summary>The form filled with what an order has.</summary>
    public static EatersForm Of(Eaters? eaters) => new()
    {
        SmallChildren = eaters?.SmallChildren == true, Vulnerable = eaters?.Vulnerable == true, Asked = eaters?.Asked ?? "", RawEggAgreed = eaters?.RawEggAgreed == true,
    };

    /// <summary>As the order has it; null if nobody is named.</summary>
    internal Eaters? Read => IsTold ? new Eaters(SmallChildren, Vulnerable) { Asked = Asked, RawEggAgreed = RawEggAgreed } : null;
}
