namespace Bakehouse.Web.Shell;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using NodaTime;
using NodaTime.Text;

/// <summary>How this shop writes dates, times, lengths and masses. The culture is the shop's, never the machine's.</summary>
public sealed class Words
{
    /// <summary>Stands on every order, cake and kitchen page: no list replaces a look at the pack.</summary>
    public const string Practice = "What a cake contains is worked out from recipes and packs: check them yourself.";

    private const char Thin = '\u2009';
    private readonly CultureInfo culture;
    private readonly Shop? shop;

    private Words(Shop? shop)
    {
        this.shop = shop;
        culture = CultureOf(shop?.Settings.Country ?? "GB");
    }

    /// <summary>The words of that shop, or of a shop with every default.</summary>
    public static Words Of(Shop? shop) => new(shop);

    /// <summary>The shop's zone.</summary>
    public DateTimeZone Zone => DateTimeZoneProviders.Tzdb.GetZoneOrNull(shop?.Zone ?? "Europe/London") ?? DateTimeZone.Utc;

    /// <summary>True if tiers are named in inches.</summary>
    public bool Inches => shop?.Settings.Inches ?? true;

    /// <summary>Wall time in the shop.</summary>
    public LocalDateTime Now(IClock clock) => Local(clock.GetCurrentInstant());

    /// <summary>That instant on the shop's wall.</summary>
    public LocalDateTime Local(Instant instant) => instant.InZone(Zone).LocalDateTime;

    /// <summary>"Oct".</summary>
    public string Month(LocalDate day) => LocalDatePattern.Create("MMM", culture).Format(day);

    /// <summary>"Fri".</summary>
    public string Weekday(LocalDate day) => LocalDatePattern.Create("ddd", culture).Format(day);

    /// <summary>"Sat 24 Oct".</summary>
    public string Day(LocalDate day) => LocalDatePattern.Create("ddd d MMM", culture).Format(day);

    /// <summary>"Sat 24 Oct 2027" when the year is not this one.</summary>
    public string Day(LocalDate day, LocalDate today) => day.Year == today.Year ? Day(day) : LocalDatePattern.Create("ddd d MMM uuuu", culture).Format(day);

    /// <summary>"Saturday 24 October".</summary>
    public string LongDay(LocalDate day) => LocalDatePattern.Create("dddd d MMMM", culture).Format(day);

    /// <summary>"Saturday 24 October 2027" when the year is not this one.</summary>
    public string LongDay(LocalDate day, LocalDate today) => day.Year == today.Year ? LongDay(day) : LocalDatePattern.Create("dddd d MMMM uuuu", culture).Format(day);

    /// <summary>"14:00", or "2:00 pm" in a shop with a 12 hour clock.</summary>
    public string Time(LocalTime time)
    {
        if (shop?.Settings.Clock24 ?? true)
        {
            return LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(time);
        }

        return LocalTimePattern.CreateWithInvariantCulture("h:mm").Format(time) + (time.Hour < 12 ? " am" : " pm");
    }

    /// <summary>"Sat 24 Oct, 14:00".</summary>
    public string DayAndTime(LocalDateTime at) => $"{Day(at.Date)}, {Time(at.TimeOfDay)}";

    /// <summary>"Sat 24 Oct 2027, 14:00" when the year is not this one.</summary>
    public string DayAndTime(LocalDateTime at, LocalDate today) => $"{Day(at.Date, today)}, {Time(at.TimeOfDay)}";

    /// <summary>"Saturday 24 October, two in the afternoon", with minutes spoken as figures.</summary>
    public string Spoken(LocalDateTime at, LocalDate today) => $"{LongDay(at.Date, today)}, {SpokenTime(at.TimeOfDay)}";

    /// <summary>"In 11 days.", "Today.", "Tomorrow.", "3 days ago.".</summary>
    public static string InDays(LocalDate today, LocalDate day) => Period.DaysBetween(today, day) switch
    {
        0 => "Today",
        1 => "Tomorrow",
        -1 => "Yesterday",
        > 1 and var n => $"In {n} days",
        var n => $"{-n} days ago",
    };

    /// <summary>How long something is over or ago: "1 h 40", "1 day 20 h", "3 days". Beyond a day nobody counts minutes.</summary>
    public static string Late(long minutes)
    {
        const int Day = 24 * 60;
        if (minutes < Day)
        {
            return Minutes(minutes);
        }

        var (days, hours) = (minutes / Day, minutes % Day / 60);
        return $"{days} {(days == 1 ? "day" : "days")}{(hours > 0 ? $" {hours} h" : "")}";
    }

    /// <summary>"20 min", "1 h 10", "2 days" from two whole days on.</summary>
    public static string Minutes(long minutes)
    {
        if (minutes < 60)
        {
            return $"{minutes} min";
        }

        if (minutes >= 2 * 24 * 60)
        {
            return $"{minutes / (24 * 60)} days";
        }

        return minutes % 60 == 0 ? $"{minutes / 60} h" : $"{minutes / 60} h {minutes % 60:00}";
    }

    /// <summary>"10 in" or "25.4 cm", by the shop's habit.</summary>
    public string Size(Length length) => Inches ? $"{Number(length.Inches)} in" : $"{Number(length.Centimetres)} cm";

    /// <summary>"6+8+10": top first, as it is said in the shop, in its own unit.</summary>
    /// <param name="tiers">Bottom first.</param>
    public string Build(IEnumerable<Length> tiers) => string.Join('+', tiers.Reverse().Select(t => Number(Inches ? t.Inches : t.Centimetres)));

    /// <summary>The same for tiers of any outline.</summary>
    public string Build(IEnumerable<CakeTier> tiers) => TierNames.Build(tiers, Inches);

    /// <summary>The build with its unit: "6+8+10 in", "8 in heart", "6 in + 9 in hexagon", "6+8 in and 36 cupcakes".</summary>
    /// <param name="tiers">Bottom first.</param>
    public string Whole(IReadOnlyList<CakeTier> tiers) => TierNames.Build(tiers, Stacked);

    private string Stacked(IReadOnlyList<CakeTier> tiers) => tiers.All(t => t.Special?.Outline is null or { Kind: OutlineKind.Round })
        ? $"{Build(tiers)} {(Inches ? "in" : "cm")}"
        : string.Join(" + ", tiers.Reverse().Select(Tier));

    /// <summary>"10 in", "9 in hexagon", "12 × 18 in".</summary>
    public string Tier(CakeTier tier) => TierNames.Of(tier, Inches);

    /// <summary>"14 in", "16 × 22 in".</summary>
    public string Board(Board board) => TierNames.Of(board, Inches);

    /// <summary>"14 in", "19 in, cut from 20 in": its box is as wide as the drum that is said first; a straight one by its sides.</summary>
    public string Drum(Board drum) => drum.Cut is null && drum.BoughtAs is { } bought && bought > drum.Diameter ? $"{Board(drum)}, cut from {Size(bought)}" : Board(drum);

    /// <summary>"10 cm".</summary>
    public string Centimetres(Length length) => $"{Number(length.Centimetres)} cm";

    /// <summary>"5 880 g" up to 10 kg, then "10.6 kg".</summary>
    public string MassOf(Mass mass)
    {
        if (mass.Grams > 10_000)
        {
            return $"{mass.Kilograms.ToString("0.0", culture)} kg";
        }

        var grams = Math.Round(mass.Grams).ToString("#,0", CultureInfo.InvariantCulture).Replace(',', Thin);
        return $"{grams} g";
    }

    /// <summary>"5.2 kg": a whole cake, which nobody weighs to the gram.</summary>
    public string Weight(Mass mass) => $"{mass.Kilograms.ToString("0.0", culture)} kg";

    /// <summary>"1.44 L".</summary>
    public string VolumeOf(Volume volume) => $"{volume.Litres.ToString("0.00", culture)} L";

    /// <summary>"10.7 cm": always one decimal, for what is cut to length.</summary>
    public string CutTo(Length length) => $"{length.Centimetres.ToString("0.0", culture)} cm";

    /// <summary>"6 mm", "6.35 mm": a filling, a board, a dowel.</summary>
    public string Thickness(Length length) => $"{length.Millimetres.ToString("0.##", culture)} mm";

    /// <summary>"14 in" rounded up to whole ones, for boxes.</summary>
    public string Room(Length length) => Inches
        ? $"{Number(Math.Ceiling(length.Inches))} in"
        : $"{Number(Math.Ceiling(length.Centimetres))} cm";

    /// <summary>"£385.00": always with its coins, so that amounts stand under each other.</summary>
    public string Money(decimal amount) => $"{(amount < 0 ? "−" : "")}{Currency}{Math.Abs(amount).ToString("#,0.00", culture)}";

    /// <summary>The sign of the shop's money.</summary>
    public string Currency => Domain.Prices.Cash.Sign(shop?.Settings.Country ?? "GB");

    /// <summary>At most two decimals, in the shop's culture.</summary>
    public string Number(decimal number) => number.ToString("0.##", culture);

    private static string SpokenTime(LocalTime time)
    {
        string[] hours = ["twelve", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven"];
        var part = time.Hour switch { < 12 => "in the morning", < 18 => "in the afternoon", _ => "in the evening" };
        var word = hours[time.Hour % 12];
        return time switch
        {
            { Hour: 12, Minute: 0 } => "noon",
            { Hour: 0, Minute: 0 } => "midnight",
            { Minute: 0 } => $"{word} {part}",
            { Minute: 30 } => $"half past {word} {part}",
            { Minute: 15 } => $"a quarter past {word} {part}",
            { Minute: 45 } => $"a quarter to {hours[(time.Hour + 1) % 12]} {part}",
            _ => $"{word} {time.Minute:00} {part}",
        };
    }

    private static CultureInfo CultureOf(string country) => country switch
    {
        "GB" or "US" or "IE" or "AU" or "NZ" or "CA" or "ZA" => CultureInfo.GetCultureInfo("en-" + country),
        _ => CultureInfo.GetCultureInfo("en-GB"),
    };
}
