namespace Bakehouse.Web.TheCakes;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Chains;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TakeOrder;
using NodaTime;

/// <summary>Reads a probe's reading as typed, learns from it, and writes it with the shop.</summary>
internal static class ReadProbe
{
    /// <summary>The reading, or everything wrong with it. It was read just now; an hour that is still to come was yesterday's.</summary>
    public static (KeptReading? Reading, IReadOnlyList<Problem> Problems) Of(
        Order order, Shop shop, IReadOnlyList<TierChain> chains, (int Tier, CoatState Coat, string Unit, string Came, string Celsius) typed, Words words, Instant now)
    {
        List<Problem> problems = [];
        var chain = chains[typed.Tier];
        if (Hours.Read(typed.Came) is not { } hour)
        {
            problems.Add(new Problem("came", Problem.Shown(typed.Came), "Nobody said since when it stands there.", "Write an hour such as 09:30."));
            hour = LocalTime.Midnight;
        }

        var today = words.Local(now).Date;
        var came = (today + hour).InZoneLeniently(words.Zone).ToInstant();
        came = came > now ? (today.PlusDays(-1) + hour).InZoneLeniently(words.Zone).ToInstant() : came;
        if (problems.Count == 0 && came < chain.Stays[0].From)
        {
            problems.Add(new Problem("came", typed.Came, $"It came out of its pan at {words.DayAndTime(words.Local(chain.Stays[0].From))}, after that.", "Look at the hour, or choose the tier that was read."));
        }

        double? celsius = null;
        if (typed.Celsius.Trim().Length > 0)
        {
            if (double.TryParse(typed.Celsius.Trim().Replace(',', '.').Replace('−', '-'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n))
            {
                celsius = n;
            }
            else
            {
                problems.Add(new Problem("celsius", Problem.Shown(typed.Celsius), "This figure can't be read.", "Write degrees Celsius, or leave it empty if it is just still cold."));
            }
        }

        return problems.Count > 0 ? (null, problems) : (new KeptReading(order.Number, chain.Tier, typed.Coat, typed.Unit, came, now, celsius), []);
    }

    /// <summary>What all readings of that place say together with the new one.</summary>
    public static Calibration Learn(Shop shop, KeptReading reading)
    {
        var cold = shop.Cold!;
        var place = cold.PlaceOf(shop.Shelves.First(s => s.Unit == reading.Unit)) with { Times = 1 };
        var figures = CakeFigures.Of(shop);
        return Calibration.Of([.. cold.Readings.Where(r => r.Unit == reading.Unit).Append(reading).Select(r => r.ToProbe(figures))], place);
    }

    /// <summary>The shop with the reading and both factors.</summary>
    public static Shop With(Shop shop, KeptReading reading, Calibration learned)
    {
        var cold = shop.Cold!;
        var unit = cold.Units.FirstOrDefault(u => u.Unit == reading.Unit)
            ?? new ColdUnit(reading.Unit, ColdChain.UsualOf(shop.Shelves.First(s => s.Unit == reading.Unit).Kind));
        return shop with
        {
            Cold = cold with
            {
                Units = [.. cold.Units.Where(u => u.Unit != reading.Unit), unit with { Times = learned.PlaceTimes }],
                CakeTimes = learned.CakeTimes,
                Readings = [.. cold.Readings, reading],
            },
        };
    }
}
