namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using System.Text.Json;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;

/// <summary>Which tiers have a drip.</summary>
public enum Dripping
{
    /// <summary>None.</summary>
    None,

    /// <summary>The top one.</summary>
    Top,

    /// <summary>Every one.</summary>
    All,
}

/// <summary>What is typed on the order page, as typed; kept as the draft of this screen.</summary>
public sealed partial class OrderForm
{
    /// <summary>The order that is changed, or a fresh id for a new one.</summary>
    public Guid Id { get; set; } = Guid.NewGuid();

    /// <summary>Number of the order that is changed, else 0.</summary>
    public int Number { get; set; }

    /// <summary>The version that was read, else 0.</summary>
    public int Version { get; set; }

    /// <summary>Where the order stood when it was read.</summary>
    public Stage Stage { get; set; } = Stage.Enquiry;

    public string Day { get; set; } = "";

    public string Hour { get; set; } = "";

    public string CutDay { get; set; } = "";

    public string CutHour { get; set; } = "";

    public Way Way { get; set; }

    public string Address { get; set; } = "";

    public string Route { get; set; } = "";

    public string Count { get; set; } = "";

    public Cut Cut { get; set; }

    /// <summary>True if guests are typed; the portions are counted from them.</summary>
    public bool ByGuests { get; set; }

    public string Guests { get; set; } = "";

    public Occasion Occasion { get; set; } = Occasion.Other;

    public Serving Serving { get; set; }

    public bool KeepsTop { get; set; }

    /// <summary>Portions short that the customer knows of.</summary>
    public int ShortTold { get; set; }

    /// <summary>Top first, as it is said and seen.</summary>
    public IList<TierForm> Tiers { get; set; } = [];

    public Finish Finish { get; set; }

    /// <summary>Sugar paste over the crumb coat, instead of a final coat.</summary>
    public bool Paste { get; set; }

    /// <summary>Which tiers have a drip.</summary>
    public Dripping Drip { get; set; }

    public Decoration Decoration { get; set; }

    public AllergyKind Allergies { get; set; }

    public IList<string> Avoid { get; set; } = [];

    public string AllergyWords { get; set; } = "";

    /// <summary>How hard it must be avoided, in the customer's word.</summary>
    public CustomersWord Told { get; set; }

    /// <summary>The words in which, somebody has said, there is nothing that is not ticked.</summary>
    public string JudgedWords { get; set; } = "";

    public string Name { get; set; } = "";

    public string Phone { get; set; } = "";

    public string Inscription { get; set; } = "";

    public string Notes { get; set; } = "";

    /// <summary>What was agreed, in the shop's currency; "" as long as no price was.</summary>
    public string Price { get; set; } = "";

    /// <summary>Why it is under the floor.</summary>
    public string PriceReason { get; set; } = "";

    /// <summary>Flowers and things on the finished cake.</summary>
    public OnTopForm OnTop { get; set; } = new();

    /// <summary>Who will eat, where it makes a difference.</summary>
    public EatersForm Eaters { get; set; } = new();

    public bool WiderAboveAgreed { get; set; }

    public bool BeyondCapAgreed { get; set; }

    /// <summary>Name of the house cake that was tapped last, else "".</summary>
    public string HouseCake { get; set; } = "";

    /// <summary>True while nothing has been typed.</summary>
    public bool IsBlank => Version == 0 && Day.Length == 0 && Count.Length == 0 && Guests.Length == 0 && IsUnbuilt && Name.Length == 0
        && Phone.Length == 0 && Notes.Length == 0 && Inscription.Length == 0 && Allergies == AllergyKind.NotAsked && !OnTop.IsAsked && !Eaters.IsTold;

    /// <summary>The same cake once more for the same customer: day, hour, inscription and notes are new, and so is the question of allergies; what was told stays to be read back.</summary>
    public static OrderForm Again(Order order, Shop shop)
    {
        var form = Of(order, shop);
        (form.Id, form.Number, form.Version, form.Stage) = (Guid.NewGuid(), 0, 0, Stage.Enquiry);
        (form.Day, form.Hour, form.CutDay, form.CutHour, form.Inscription, form.Notes) = ("", "", "", "", "", "");
        (form.WiderAboveAgreed, form.BeyondCapAgreed, form.Price, form.PriceReason, form.ShortTold) = (false, false, "", "", 0);
        form.Eaters = new EatersForm();
        (form.Tiers, form.Cupcakes) = (OwnIds(form.Tiers), OwnIds(form.Cupcakes));
        if (form.Allergies == AllergyKind.NoneTold)
        {
            form.Allergies = AllergyKind.NotAsked;
        }

        return form;
    }

    /// <summary>A cutting cake beside an order, for what the customer knows is missing there: its day, hour, way, flavour and coat; allergies are asked again.</summary>
    public static OrderForm Beside(Order order, CuttingCake cake, Shop shop)
    {
        var (form, stands) = (Again(order, shop), Of(order, shop));
        (form.Day, form.Hour, form.CutDay, form.CutHour) = (stands.Day, stands.Hour, stands.CutDay, stands.CutHour);
        (form.ByGuests, form.Guests, form.KeepsTop, form.Count) = (false, "", false, order.ShortTold.ToString(CultureInfo.InvariantCulture));
        (form.Decoration, form.OnTop, form.Notes) = (Decoration.Simple, new OnTopForm(), string.Create(CultureInfo.InvariantCulture, $"Cut in the kitchen beside order {order.Number}."));
        (form.Tiers, form.Cupcakes) = (OwnIds([TierForm.Of(cake.Tier, shop.Settings.Inches)]), []);
        return form;
    }

    /// <summary>Fills in the build of a house cake; as many portions as it has where no number was said.</summary>
    public void Take(HouseCake cake, Shop shop)
    {
        HouseCake = cake.Name;
        (Tiers, Cupcakes) = (OwnIds(StackOf(cake.Tiers, shop.Settings.Inches)), OwnIds(BatchesOf(cake.Tiers)));
        (Finish, Decoration, Paste, Drip) = (cake.Finish, cake.Decoration, IsPaste(cake.Tiers), DripOf(cake.Tiers));
        if (Count.Trim().Length == 0 && BuildSheet.Try(cake.Tiers, cake.Finish, CakeFigures.Of(shop)) is { } sheet)
        {
            Count = sheet.Portions(Cut).ToString(CultureInfo.InvariantCulture);
        }
    }

    private static bool IsPaste(IReadOnlyList<CakeTier> tiers) => tiers.Any(t => t.Special?.Paste is not null);

    private static Dripping DripOf(IReadOnlyList<CakeTier> tiers) => tiers.Count(t => t.Special is { Drip.Millimetres: > 0 }) switch { 0 => Dripping.None, 1 when tiers.Count > 1 => Dripping.Top, _ => Dripping.All };

    private static IList<TierForm> OwnIds(IList<TierForm> tiers)
    {
        foreach (var tier in tiers)
        {
            tier.Id = Guid.NewGuid();
        }

        return tiers;
    }

    /// <summary>What decides how much work it is and for when in the day, in one string to compare.</summary>
    internal string Work => JsonSerializer.Serialize((object)new { Id, Hour, Way, Route, Count, Cut, KeepsTop = ByGuests && KeepsTop, Tiers, Cupcakes, Finish, Paste, Drip, Decoration, Avoid, BeyondCapAgreed });

    /// <summary>All but who it is for, notes and the agreed price, in one string to compare: what drawing, price and answer go by.</summary>
    internal string Asked => Work + JsonSerializer.Serialize((object)new { Day, CutDay, CutHour, Address, Inscription, Allergies, AllergyWords, Told, JudgedWords, WiderAboveAgreed, ByGuests, Guests, Occasion, Serving, OnTop, Eaters });

    /// <summary>The guests as typed; null if portions are asked for, or as long as their number can't be read.</summary>
    internal Guests? ReadGuests => ByGuests && Guests.Trim().Length <= 6 && int.TryParse(Guests.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n)
        ? new Guests(n, Occasion, Serving, KeepsTop)
        : null;

    /// <summary>Counts the portions from the guests, if those are typed.</summary>
    internal void CountGuests()
    {
        if (ByGuests)
        {
            Count = ReadGuests is { } guests && !guests.Problems().Any() ? guests.Portions.ToString(CultureInfo.InvariantCulture) : "";
        }
    }

    /// <summary>The form filled with an order, to change it.</summary>
    public static OrderForm Of(Order order, Shop shop)
    {
        var words = Words.Of(shop);
        return new OrderForm
        {
            Id = order.Id,
            Number = order.Number,
            Version = order.Version,
            Stage = order.Stage,
            Day = order.Handover.At.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture),
            Hour = words.Time(order.Handover.At.TimeOfDay),
            CutDay = order.Cutting is { } c && c.Date != order.Handover.At.Date ? c.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) : "",
            CutHour = order.Cutting is { } cut ? words.Time(cut.TimeOfDay) : "",
            Way = order.Handover.Way,
            Address = order.Handover.Address,
            Route = order.Handover.RouteMinutes > 0 ? order.Handover.RouteMinutes.ToString(CultureInfo.InvariantCulture) : "",
            Count = order.Portions.Count.ToString(CultureInfo.InvariantCulture),
            Cut = order.Portions.Cut,
            ByGuests = order.Guests is not null,
            Guests = order.Guests?.Invited.ToString(CultureInfo.InvariantCulture) ?? "",
            Occasion = order.Guests?.Occasion ?? Occasion.Other,
            Serving = order.Guests?.Serving ?? Serving.Plated,
            KeepsTop = order.Guests?.KeepsTop ?? false,
            ShortTold = order.ShortTold,
            Tiers = StackOf(order.Tiers, shop.Settings.Inches),
            Cupcakes = BatchesOf(order.Tiers),
            Finish = order.Finish,
            Paste = IsPaste(order.Tiers),
            Drip = DripOf(order.Tiers),
            Decoration = order.Decoration,
            Allergies = order.Allergies.Kind,
            Avoid = [.. order.Allergies.Avoid],
            AllergyWords = order.Allergies.Words,
            Told = order.Allergies.Told,
            JudgedWords = order.Allergies.Judged,
            Name = order.Customer.Name,
            Phone = TakeOrder.Phone.Show(order.Customer.Phone, shop.Settings.Country),
            Inscription = order.Inscription,
            Notes = order.Notes,
            Price = order.Price is { } price ? price.Amount.ToString("0.##", CultureInfo.InvariantCulture) : "",
            PriceReason = order.Price?.Reason ?? "",
            OnTop = OnTopForm.Of(order.OnTop),
            Eaters = EatersForm.Of(order.Eaters),
            WiderAboveAgreed = order.WiderAboveAgreed,
            BeyondCapAgreed = order.BeyondCapAgreed,
        };
    }
}
