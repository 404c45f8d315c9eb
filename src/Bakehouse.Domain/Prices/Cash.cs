namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Measures;

/// <summary>How an amount that is no whole number of the smallest coin is rounded.</summary>
public enum CashRounding
{
    /// <summary>Half and more up (HMRC VATREC12030: under 0.5p down, 0.5p and over up).</summary>
    HalfUp,

    /// <summary>Half to the even neighbour (ISO 80000-1, annex B).</summary>
    HalfEven,
}

/// <summary>Amounts of money: decimal, in the shop's own currency, never binary. Whatever is split adds up to the whole.</summary>
public static class Cash
{
    /// <summary>Decimals of the coin: 2 in most currencies.</summary>
    public const int Places = 2;

    /// <summary>The sign of a country's money, as it stands before an amount.</summary>
    /// <param name="country">By ISO 3166-1, two letters.</param>
    public static string Sign(string country) => country switch { "GB" => "£", "IE" => "€", "ZA" => "R", _ => "$" };

    /// <summary>An amount in whole coins.</summary>
    public static decimal Rounded(decimal amount, CashRounding rounding = CashRounding.HalfUp, int places = Places) =>
        decimal.Round(amount, places, rounding == CashRounding.HalfUp ? MidpointRounding.AwayFromZero : MidpointRounding.ToEven);

    /// <summary>The next multiple of a step at or above it.</summary>
    /// <param name="step">More than zero.</param>
    public static decimal UpTo(decimal amount, decimal step)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        return decimal.Ceiling(amount / step) * step;
    }

    /// <summary>An amount shared out in whole coins by largest remainder.</summary>
    /// <param name="weights">Zero or more each, not all zero.</param>
    public static IReadOnlyList<decimal> Split(decimal amount, IReadOnlyList<decimal> weights) => Shares.Split(amount, weights, 0.01m);

    /// <summary>A share of a price to be paid when it is booked, up to the next multiple of a step, never more than the price.</summary>
    /// <param name="share">0 to 1.</param>
    public static decimal Deposit(decimal price, decimal share, decimal step)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(share);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 1);
        return Math.Min(price, UpTo(price * share, step));
    }

    /// <summary>Tax that is inside a gross amount: G·r/(1+r).</summary>
    /// <param name="rate">0.20 for 20 %.</param>
    public static decimal TaxInside(decimal gross, decimal rate, CashRounding rounding = CashRounding.HalfUp) => Rounded(gross * rate / (1 + rate), rounding);

    /// <summary>Tax on lines that are net: rounded line by line, or once on their sum. The two may differ by coins; a shop keeps to one.</summary>
    public static decimal TaxOn(IReadOnlyList<decimal> net, decimal rate, bool byLine, CashRounding rounding = CashRounding.HalfUp) =>
        byLine ? net.Sum(n => Rounded(n * rate, rounding)) : Rounded(net.Sum() * rate, rounding);
}

/// <summary>Mark-up on cost, margin on price, and what must be sold.</summary>
public static class Earning
{
    /// <summary>Price of a cost with a mark-up: c·(1+k), not rounded.</summary>
    public static decimal Price(decimal cost, decimal markUp) => cost * (1 + markUp);

    /// <summary>Margin of a price over its cost: (p−c)/p.</summary>
    /// <param name="price">More than zero.</param>
    public static decimal Margin(decimal cost, decimal price)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(price);
        return (price - cost) / price;
    }

    /// <summary>The margin that a mark-up gives: k/(1+k).</summary>
    public static decimal MarginOf(decimal markUp) => markUp / (1 + markUp);

    /// <summary>The mark-up that a margin needs: m/(1−m), margin under 1.</summary>
    public static decimal MarkUpFor(decimal margin)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(margin, 1);
        return margin / (1 - margin);
    }

    /// <summary>Pieces that must be sold before anything is earned: fixed cost by price less what each takes, rounded up; null if each loses.</summary>
    public static int? BreakEven(decimal fixedCost, decimal each, decimal price) => price > each ? (int)decimal.Ceiling(fixedCost / (price - each)) : null;

    /// <summary>Part of the whole cost that is fixed, at so many pieces.</summary>
    public static decimal FixedShare(decimal fixedCost, decimal each, int pieces) => fixedCost / (fixedCost + (each * pieces));
}
