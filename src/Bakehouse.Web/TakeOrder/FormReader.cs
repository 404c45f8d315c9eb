namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>
/// Makes an order of what was typed, or names everything that is wrong with it in one go: what can't be read, and what the shop
/// can't do. The book checks the order again, since this is not the only way in.
/// </summary>
/// <param name="now">Checks are made for this moment.</param>
/// <param name="owner">True if the owner types.</param>
/// <param name="orders">All orders, for the caps of a day; null for none.</param>
/// <param name="recipes">Those from which an order is made; null if the shop keeps none.</param>
public sealed partial class FormReader(Shop shop, Instant now, bool owner, IReadOnlyList<Order>? orders = null, Func<Order, Cookbook>? recipes = null)
{
    private readonly List<Problem> problems = [];

    /// <summary>The order if nothing is wrong, and every problem, each with the id of its field.</summary>
    /// <param name="stage">The stage in which it shall be written.</param>
    /// <param name="before">The version that is changed, or null. What was wrong with it already holds nobody up.</param>
    public (Order? Order, IReadOnlyList<Problem> Problems) Read(OrderForm form, Stage stage, Order? before = null)
    {
        problems.Clear();
        var order = Order(form, stage);
        var unread = problems.Select(p => p.Where).ToHashSet(StringComparer.Ordinal);
        // Beside a tier that can't be read nobody knows yet which one is wider.
        var tiersRead = !unread.Any(FieldNames.IsBuild);
        var checkedAs = tiersRead ? order : order with { WiderAboveAgreed = true };
        var full = DayCaps.Against(order, before, orders ?? [], shop, owner);
        problems.AddRange(OrderChecks.NewProblems(checkedAs, before, shop, now, owner || !tiersRead, recipes?.Invoke(before ?? order))
            .Concat(full is null ? [] : [full])
            .Select(p => FieldNames.OnPage(p, form.Tiers.Count))
            .Where(p => !unread.Contains(p.Where) && !(p.Where == "when" && (unread.Contains("day") || unread.Contains("hour")))));
        Problem?[] money = problems.Count > 0 ? [] : [FloorPrice.Against(order, before, recipes?.Invoke(before ?? order) ?? Cookbook.Empty, shop, owner), YearlyCap.Against(order, before, orders ?? [], shop, owner)];
        problems.AddRange(money.OfType<Problem>().Select(p => FieldNames.OnPage(p, form.Tiers.Count)));

        return problems.Count == 0 ? (order, []) : (null, [.. problems]);
    }

    /// <summary>What the cap of the day says of this cake, before it is taken; null if there is room.</summary>
    /// <param name="before">The version that is changed, or null.</param>
    public Problem? DayFull(OrderForm form, Order? before) =>
        When(form)?.Date is { } day && form.Tiers.Count > 1 && !(before is not null && DayCaps.Counts(before, day))
            ? DayCaps.Full(day, form.Id, orders ?? [], shop)
            : null;

    /// <summary>The moment as read, or null; nothing is written down as a problem.</summary>
    public LocalDateTime? When(OrderForm form) => Moment(form.Day, form.Hour);

    /// <summary>When it is cut, as read, or null; without a day of its own on the day of the handover.</summary>
    public LocalDateTime? Cut(OrderForm form) => Moment(form.CutDay.Trim().Length == 0 ? form.Day : form.CutDay, form.CutHour);

    /// <summary>The tiers for the drawing, bottom first, or null as long as one of them can't be read.</summary>
    public IReadOnlyList<CakeTier>? Drawn(OrderForm form)
    {
        problems.Clear();
        var tiers = Tiers(form);
        return problems.Count == 0 ? tiers : null;
    }

    /// <summary>The order as far as it is known, to ask whether it can be at its day and hour. Null as long as those can't be read.</summary>
    public Order? Asked(OrderForm form, Order? before) => When(form) is null ? null : Known(form, before);

    /// <summary>
    /// The order as far as it is known, whatever its day: either tiers or a number, for which the smallest usual build is assumed. Null as
    /// long as those can't be read, and for what is over.
    /// </summary>
    public Order? Known(OrderForm form, Order? before)
    {
        if (before?.Stage is Stage.HandedOver or Stage.Cancelled)
        {
            return null;
        }

        problems.Clear();
        var order = Order(form, before is not null && Stages.IsPlanned(before.Stage) ? before.Stage : Stage.Booked) with { Cutting = null };
        var isUnread = problems.Exists(p => p.Where == "route" || FieldNames.IsBuild(p.Where));
        return isUnread ? null
            : order.Tiers.Count > 0 ? order
            : problems.Exists(p => p.Where == "count") || Builds.For(order.Portions, shop.Settings.Inches, CakeFigures.Of(shop)) is not { } build ? null
            : order with { Tiers = build };
    }

    private LocalDate Today => Words.Of(shop).Local(now).Date;

    private bool MonthFirst => shop.Settings.Country == "US";

    /// <summary>Where a field can't be read, something that fits stands in for it; its problem is written down already.</summary>
    private Order Order(OrderForm form, Stage stage)
    {
        var at = At(form.Day, form.Hour, "day", "hour");
        var cutting = Cutting(form, at);
        var route = form.Way == Way.Deliver ? Whole("route", form.Route, 0, "minutes on the road") : 0;
        var count = form.ByGuests ? Guests(form) : Whole("count", form.Count, 1, "portions");
        var tiers = Tiers(form);
        var phone = ReadPhone(form.Phone);
        return new Order(
            form.Id, form.Number, form.Version, stage,
            new Customer(form.Name.Trim(), phone),
            new Handover(form.Way, at ?? Today.PlusDays(1 + (shop.Settings.NoticeHours / 24)).At(LocalTime.Noon), form.Way == Way.Deliver ? form.Address.Trim() : "", route),
            cutting, new Portions(count, form.Cut), tiers, form.Finish, form.Decoration,
            Allergies(form), form.Inscription.Trim(), form.Notes.Trim(), form.WiderAboveAgreed, form.BeyondCapAgreed) { Price = Price(form), Guests = form.ReadGuests, ShortTold = form.ShortTold, OnTop = form.OnTop.Read((text, what) => Whole("on-top", text, 1, what)), Eaters = form.Eaters.Read };
    }

    /// <summary>Portions that the guests take; 1 stands in as long as their number can't be read or is none.</summary>
    private int Guests(OrderForm form)
    {
        Whole("count", form.Guests, 1, "guests");
        return form.ReadGuests is { } guests && !guests.Problems().Any() ? guests.Portions : 1;
    }

    private AgreedPrice? Price(OrderForm form) =>
        form.Price.Trim().Length == 0 ? null : new AgreedPrice(Figure("price", form.Price, 0, "the shop's money"), form.PriceReason.Trim());

    /// <summary>The answer about allergies as typed.</summary>
    internal static AllergyAnswer Allergies(OrderForm form) => form.Allergies switch
    {
        AllergyKind.Avoid => new AllergyAnswer(AllergyKind.Avoid, [.. form.Avoid], form.AllergyWords.Trim()) { Told = form.Told, Judged = form.JudgedWords.Trim() },
        AllergyKind.NoneTold => AllergyAnswer.NoneTold,
        _ => AllergyAnswer.NotAsked,
    };

    private LocalDateTime? Moment(string dayText, string hourText) =>
        Days.Read(dayText, Today, MonthFirst).Day is { } day && Hours.OfHandover(hourText) is { } hour ? day + hour : null;

    private LocalDateTime? At(string dayText, string hourText, string dayField, string hourField)
    {
        var (day, why) = Days.Read(dayText, Today, MonthFirst);
        if (day is null)
        {
            Wrong(dayField, dayText, why, "Write fri, 24, 24/10 or +3.");
        }

        var hour = Hours.OfHandover(hourText);
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

        if (form.CutDay.Trim().Length > 0)
        {
            var at = At(form.CutDay, form.CutHour, "cut-day", "cut-hour");
            return handover is null ? null : at;
        }

        var hour = Hours.OfHandover(form.CutHour);
        if (hour is null)
        {
            Wrong("cut-hour", form.CutHour, "That is no hour of the day.", "Write 14 or 14:30.");
        }

        return handover is { } day && hour is { } h ? day.Date + h : null;
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

    private int Whole(string field, string text, int standIn, string what)
    {
        if (text.Trim().Length <= 6 && int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n))
        {
            return n;
        }

        Wrong(field, text, $"A whole number of {what} is needed here.", "Write it in figures.");
        return standIn;
    }

    /// <summary>A figure with a decimal point or a decimal comma.</summary>
    private decimal Figure(string field, string text, decimal standIn, string what)
    {
        if (text.Trim().Length <= 12 && decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n))
        {
            return n;
        }

        Wrong(field, text, $"A figure in {what} is needed here.", "Write it in figures, such as 10 or 12.5.");
        return standIn;
    }

    private void Wrong(string field, string value, string sentence, string remedy) =>
        problems.Add(new Problem(field, Problem.Shown(value), sentence, remedy));
}
