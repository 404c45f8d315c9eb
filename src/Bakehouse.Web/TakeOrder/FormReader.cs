namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>
/// Makes an order of what was typed, or names everything that can't be read, each with the id of its field. What the shop
/// can't do (hours, widths, notice) is checked in the book, for every way in.
/// </summary>
public sealed class FormReader(Shop shop, LocalDateTime now)
{
    private readonly List<Problem> problems = [];

    /// <summary>The order if nothing is wrong, and every problem.</summary>
    /// <param name="stage">The stage in which it shall be written.</param>
    public (Order? Order, IReadOnlyList<Problem> Problems) Read(OrderForm form, Stage stage)
    {
        problems.Clear();
        var at = At(form.Day, form.Hour, "day", "hour");
        var cutting = Cutting(form, at);
        var route = form.Way == Way.Deliver ? Whole("route", form.Route, 0, 600, "minutes on the road") : 0;
        var count = Whole("count", form.Count, 1, 10_000, "portions");
        var tiers = form.Tiers.Select((t, i) => ReadTier(t, i)).Reverse().ToList();
        if (tiers.Count == 0)
        {
            Wrong("tiers", "", "The cake has no tier.", "Tap a build, or add a tier.");
        }

        var phone = ReadPhone(form.Phone);
        ReadWho(form, stage);
        if (problems.Count > 0)
        {
            return (null, [.. problems]);
        }

        var order = new Order(
            form.Id, form.Number, form.Version, stage,
            new Customer(form.Name.Trim(), phone),
            new Handover(form.Way, at!.Value, form.Way == Way.Deliver ? form.Address.Trim() : "", route),
            cutting, new Portions(count, form.Cut), [.. tiers.OfType<CakeTier>()], form.Finish, form.Decoration,
            Allergies(form), form.Inscription.Trim(), form.Notes.Trim(), form.WiderAboveAgreed);
        return (order, []);
    }

    /// <summary>The moment as read, or null; nothing is written down as a problem.</summary>
    public LocalDateTime? When(OrderForm form) =>
        Days.Read(form.Day, now.Date, MonthFirst).Day is { } day && Hours.Read(form.Hour) is { } hour ? day + hour : null;

    /// <summary>The tiers that can be read so far, bottom first, for the drawing.</summary>
    public IReadOnlyList<CakeTier> Drawn(OrderForm form)
    {
        var tiers = form.Tiers.Select((t, i) => ReadTier(t, i)).OfType<CakeTier>().Reverse().ToList();
        problems.Clear();
        return tiers;
    }

    private bool MonthFirst => shop.Settings.Country == "US";

    private static AllergyAnswer Allergies(OrderForm form) => form.Allergies switch
    {
        AllergyKind.Avoid => new AllergyAnswer(AllergyKind.Avoid, [.. form.Avoid], form.AllergyWords.Trim()),
        AllergyKind.NoneTold => AllergyAnswer.NoneTold,
        _ => AllergyAnswer.NotAsked,
    };

    private void ReadWho(OrderForm form, Stage stage)
    {
        if (form.Name.Trim().Length == 0)
        {
            Wrong("name", form.Name, "Nobody is named.", "Write who ordered it.");
        }

        if (form.Way == Way.Deliver && form.Address.Trim().Length == 0)
        {
            Wrong("address", form.Address, "A delivery has no address.", "Write where it goes.");
        }

        if (form.Allergies == AllergyKind.NotAsked && Stages.IsPlanned(stage))
        {
            Wrong("allergies", "", "Nobody has asked about allergies.", "Ask, then tap None told or Avoid.");
        }

        if (form.Allergies == AllergyKind.Avoid && form.Avoid.Count == 0 && form.AllergyWords.Trim().Length == 0)
        {
            Wrong("allergies", "", "Avoid what?", "Tap what must be left out, or write the customer's words.");
        }
    }

    private LocalDateTime? At(string dayText, string hourText, string dayField, string hourField)
    {
        var (day, why) = Days.Read(dayText, now.Date, MonthFirst);
        if (day is null)
        {
            Wrong(dayField, dayText, why, "Write fri, 24, 24/10 or +3.");
        }

        var hour = Hours.Read(hourText);
        if (hour is null)
        {
            Wrong(hourField, hourText, hourText.Trim().Length == 0 ? "No hour yet." : "That is no hour of the day.", "Write 14 or 14:30.");
        }

        return day is { } d && hour is { } h ? d + h : null;
    }

    private LocalDateTime? Cutting(OrderForm form, LocalDateTime? handover)
    {
        if (form.CutHour.Trim().Length == 0 && form.CutDay.Trim().Length == 0)
        {
            return null;
        }

        var day = form.CutDay.Trim().Length == 0 ? handover?.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "today" : form.CutDay;
        return At(day, form.CutHour, "cut-hour", "cut-hour");
    }

    private string ReadPhone(string text)
    {
        if (text.Trim().Length == 0)
        {
            return "";
        }

        var read = Phone.Read(text, shop.Settings.Country);
        if (read is null)
        {
            Wrong("phone", text, $"No telephone number in {shop.Settings.Country} looks like this.", "Count the digits, or start with + and the country.");
        }

        return read ?? "";
    }

    private CakeTier? ReadTier(TierForm tier, int at)
    {
        var before = problems.Count;
        var name = string.Create(CultureInfo.InvariantCulture, $"tier-{at + 1}");
        var inches = shop.Settings.Inches;
        var diameter = Measure(name, tier.Diameter, inches ? 2 : 5, inches ? 30 : 76, inches ? "in wide" : "cm wide");
        var height = Measure(name, tier.Height, 2, 60, "cm high");
        var layers = Whole(name, tier.Layers, 1, 8, "layers");
        var colours = tier.Colours
            .Select(c => new CoatColour(c.Name.Trim(), c.Swatch, Measure(name, c.Share, 0, 100, "% of the coat") / 100))
            .ToList();
        var sum = colours.Sum(c => c.Share);
        if (problems.Count == before && sum != 1)
        {
            var percent = (sum * 100).ToString("0.##", CultureInfo.InvariantCulture);
            Wrong(name, $"{percent} %", $"The colours of this tier add up to {percent} %, not to 100 %.", "Change a share.");
        }

        return problems.Count > before ? null : new CakeTier(
            tier.Id, inches ? Length.FromInches(diameter) : Length.FromCentimetres(diameter), Length.FromCentimetres(height),
            layers, tier.Sponge, tier.Filling, colours);
    }

    private int Whole(string field, string text, int least, int most, string what)
    {
        if (int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n >= least && n <= most)
        {
            return n;
        }

        Wrong(field, text, $"Number of {what}: a whole number from {least} to {most} is needed.", "Write it in figures.");
        return least;
    }

    /// <summary>A figure with a decimal point or a decimal comma.</summary>
    private decimal Measure(string field, string text, decimal least, decimal most, string unit)
    {
        if (decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n)
            && n >= least && n <= most)
        {
            return n;
        }

        Wrong(field, text, string.Create(CultureInfo.InvariantCulture, $"A figure from {least} to {most} {unit} is needed."), "Write it in figures.");
        return least;
    }

    private void Wrong(string field, string value, string sentence, string remedy) =>
        problems.Add(new Problem(field, value.Length > 80 ? value[..80] : value, sentence, remedy));
}
