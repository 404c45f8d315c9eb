namespace Bakehouse.Web.TakeOrder.Messages;

using System.Globalization;
using System.Text.RegularExpressions;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;
using PhoneNumbers;

/// <summary>
/// Reads a message in English as somebody at the counter would: what stands there once is taken, what stands there in two ways is asked.
/// Nothing is taken for granted about allergies: "no allergies" is a reason to ask, never an answer.
/// </summary>
public sealed class MessageReader(Shop shop, LocalDate today)
{
    /// <summary>So many characters at most: as long as the notes of an order.</summary>
    public const int Longest = OrderChecks.LongestNotes;

    private readonly List<string> again = [];
    private readonly Words words = Words.Of(shop);

    /// <summary>What was read, or why nothing could be.</summary>
    public (MessageRead? Read, Problem? Problem) Read(string message)
    {
        again.Clear();
        var text = message.Trim();
        if (text.Length is 0 or > Longest)
        {
            return (null, new Problem(
                "message", text.Length == 0 ? "" : $"{text.Length} characters",
                text.Length == 0 ? "There is no message yet." : $"The message has {text.Length} characters; at most {Longest} can be read.",
                text.Length == 0 ? "Paste it here." : "Leave out what is quoted below it."));
        }

        var phones = PhoneNumberUtil.GetInstance().FindNumbers(text, shop.Settings.Country).Select(n => n.RawString).Distinct(StringComparer.Ordinal).ToList();
        var plain = phones.Aggregate(text, (t, p) => t.Replace(p, new string(' ', p.Length), StringComparison.Ordinal));
        var allergies = Sentences(text).Where(s => MessagePatterns.Allergic().IsMatch(s)).ToList();
        var (sponge, filling) = Flavour(plain);
        again.AddRange(Dangers(plain));
        var way = HowItLeaves(plain);
        return (new MessageRead(
            text, Day(plain), Hour(plain), Count(plain), Sizes(plain), TierCount(plain), sponge, filling,
            Avoided(allergies), Told(allergies), way, way == Way.Deliver ? Where(text) : "", Name(text), One(phones, "telephone numbers", p => p) ?? "",
            MessagePatterns.Inscription().Match(text).Groups["words"].Value.Trim(), [.. again]), null);
    }

    /// <summary>What a message only hints at is asked, never filled in.</summary>
    private static IEnumerable<string> Dangers(string text)
    {
        if (MessagePatterns.FreshFlowers().IsMatch(text))
        {
            yield return "Fresh flowers are named. Ask which and who brings them, and write them under On top.";
        }

        if (MessagePatterns.WhoEats().IsMatch(text))
        {
            yield return "Small children, or somebody pregnant or old, may eat of it. Ask, and tick it under Who eats.";
        }
    }

    private LocalDate? Day(string text)
    {
        var dated = MessagePatterns.DayThenMonth().Matches(text).Concat(MessagePatterns.MonthThenDay().Matches(text))
            .Select(m => $"{m.Groups["week"].Value} {m.Groups["day"].Value} {m.Groups["month"].Value} {m.Groups["year"].Value}")
            .Concat(MessagePatterns.Slashed().Matches(text).Select(m => m.Value)).ToList();
        var read = (dated.Count > 0 ? dated : [.. MessagePatterns.NamedDay().Matches(text).Select(m => m.Value)])
            .Select(said => Days.Read(Regex.Replace(said.Trim(), @"\s+", " ", RegexOptions.None, TimeSpan.FromSeconds(1)), today, shop.Settings.Country == "US")).ToList();
        again.AddRange(read.Where(r => r.Day is null).Select(r => r.Why).Distinct());
        return One(read.Select(r => r.Day).OfType<LocalDate>(), "days", words.Day);
    }

    private LocalTime? Hour(string text) => One(
        MessagePatterns.Hour().Matches(text).Select(m => m.Value.ToLowerInvariant() is "noon" or "midday" ? LocalTime.Noon : Hours.OfHandover(m.Value)).OfType<LocalTime>(),
        "hours", words.Time);

    private int? Count(string text)
    {
        var heads = MessagePatterns.Heads().Matches(text);
        var said = (heads.Count > 0 ? heads : MessagePatterns.For().Matches(text)).Select(m => (Low: NumberWords.Read(m.Groups["n"].Value), High: m.Groups["to"].Value)).ToList();
        if (said is [{ High.Length: > 0 } range])
        {
            again.Add($"{range.Low} to {range.High} portions: {range.High} are taken.");
        }

        return One(said.Select(s => s.High.Length > 0 ? int.Parse(s.High, CultureInfo.InvariantCulture) : s.Low).Where(n => n > 0), "numbers of portions", n => n.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>The widest is at the bottom, however it was said; a size in the other unit is for a person to turn into ours.</summary>
    private List<int> Sizes(string text)
    {
        var named = MessagePatterns.Sizes().Matches(text).Select(m => (Sizes: m.Groups["sizes"].Value, Unit: m.Groups["unit"].Value)).Distinct().ToList();
        var foreign = named.Where(n => n.Unit.Length > 0 && (n.Unit == "cm") == shop.Settings.Inches).ToList();
        again.AddRange(foreign.Select(f => $"{f.Sizes} {f.Unit} is not in the shop's unit."));
        var ours = named.Except(foreign).Select(n => string.Join('+', Regex.Matches(n.Sizes, @"\d+", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(d => d.Value))).Distinct(StringComparer.Ordinal);
        return One(ours, "sizes", s => s) is { } sizes ? [.. sizes.Split('+').Select(d => int.Parse(d, CultureInfo.InvariantCulture)).Order()] : [];
    }

    private int? TierCount(string text) => One(MessagePatterns.Tiers().Matches(text).Select(m => NumberWords.Read(m.Groups["n"].Value)), "numbers of tiers", n => n.ToString(CultureInfo.InvariantCulture));

    private (string? Sponge, string? Filling) Flavour(string text)
    {
        var (sponges, fillings) = FlavourWords.Find(text);
        return (One(sponges, "sponges", s => s), One(fillings, "fillings", f => f.Replace('-', ' ')));
    }

    private List<string> Avoided(IReadOnlyList<string> sentences) =>
        [.. sentences.Where(s => !MessagePatterns.NoAllergies().IsMatch(s)).SelectMany(s => FlavourWords.Allergens(s, shop.Allergens)).Distinct(StringComparer.Ordinal)];

    private string Told(IReadOnlyList<string> sentences)
    {
        again.AddRange(sentences.Where(s => MessagePatterns.NoAllergies().IsMatch(s)).Select(s => $"They write “{s}”. Ask, and tap None told yourself."));
        return string.Join(' ', sentences.Where(s => !MessagePatterns.NoAllergies().IsMatch(s)));
    }

    private Way? HowItLeaves(string text)
    {
        var (delivered, collected) = (MessagePatterns.Delivered().IsMatch(text), MessagePatterns.Collected().IsMatch(text));
        if (delivered && collected)
        {
            again.Add("They write of collecting and of delivering.");
        }

        return delivered == collected ? null : delivered ? Way.Deliver : Way.Collect;
    }

    private static string Where(string text) => MessagePatterns.Where().Match(text).Groups["where"].Value.Trim();

    /// <summary>As they call themselves, or as they sign.</summary>
    private static string Name(string text)
    {
        var named = MessagePatterns.NamedAs().Match(text);
        var lines = text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return named.Success ? named.Groups["name"].Value
            : lines.Length < 2 ? ""
            : lines.Skip(1).Reverse().Take(3).Select(l => MessagePatterns.Signed().Match(l)).FirstOrDefault(m => m.Success)?.Groups["name"].Value ?? "";
    }

    private static IEnumerable<string> Sentences(string text) =>
        Regex.Split(text, @"(?<=[.!?])\s+|\n", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(s => s.Trim()).Where(s => s.Length > 0);

    /// <summary>The one thing that is named; with two of them none, and a person is told which.</summary>
    private T? One<T>(IEnumerable<T> named, string what, Func<T, string> say)
        where T : struct
    {
        var distinct = named.Distinct().ToList();
        Twice(distinct.Select(say), what);
        return distinct.Count == 1 ? distinct[0] : null;
    }

    private string? One(IEnumerable<string> named, string what, Func<string, string> say)
    {
        var distinct = named.Distinct(StringComparer.Ordinal).ToList();
        Twice(distinct.Select(say), what);
        return distinct.Count == 1 ? distinct[0] : null;
    }

    private void Twice(IEnumerable<string> said, string what)
    {
        if (said.ToList() is { Count: > 1 } several)
        {
            again.Add($"They name {several.Count} {what}: {string.Join(", ", several)}.");
        }
    }
}
