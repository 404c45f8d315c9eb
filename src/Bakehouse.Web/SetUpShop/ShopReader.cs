namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.TakeOrder;
using NodaTime;

/// <summary>Makes a shop of what was typed, or names everything wrong with it, each with the id of its field.</summary>
public sealed class ShopReader(Shop? before)
{
    private readonly List<Problem> problems = [];

    /// <summary>The shop if nothing is wrong, and every problem.</summary>
    public (Shop? Shop, IReadOnlyList<Problem> Problems) Read(ShopForm form)
    {
        problems.Clear();
        var name = Named("name", form.Name, "The shop has no name.", "Write it as it stands over the door.");
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(form.Zone.Trim()) is null)
        {
            Wrong("zone", form.Zone, "No zone of the IANA list has this name.", "Write one such as Europe/London.");
        }

        var hours = Rows("hours", form.Hours).Select(r => new OpeningHours(r.Day, r.From, r.To)).ToList();
        if (form.People.Count == 0)
        {
            Wrong("people", "", "Nobody works here.", "Add one person.");
        }

        var people = form.People.Select(ReadPerson).ToList();
        if (people.Count > 0 && people.All(p => p.Role != Role.Owner))
        {
            Wrong("people", "", "Nobody is the owner, so nobody could change the shop again.", "Make one person the owner.");
        }

        var ovens = form.Ovens.Select(ReadOven).ToList();
        var bowls = form.Bowls.Select(ReadBowl).ToList();
        var shelves = form.Shelves.Select(ReadShelf).ToList();
        var racks = Whole("racks", form.Racks, 0, 500);
        var benches = Whole("benches", form.Benches, 1, 100);
        var turntables = Whole("turntables", form.Turntables, 1, 100);
        var settings = Settings(form);
        var prices = new PricesReader(form.Inches, before?.Prices, problems).Read(form.Prices);
        var limits = form.Limits.Read(problems);
        var cold = form.Cold.Read(before?.Cold, form.Country, [.. shelves.Select(s => s.Unit)], problems);
        var allergens = form.Allergens?.Read(before?.Allergens, problems) ?? before?.Allergens ?? AllergenRules.Usual;
        var figures = form.Figures is { } typed ? typed.Read(problems) : before?.Figures;
        if (problems.Count > 0)
        {
            return (null, [.. problems]);
        }

        return (new Shop(
            form.Version, name, form.Zone.Trim(), hours, before?.Closed ?? [], people, ovens, bowls, shelves,
            racks, benches, turntables, settings, before?.IsSample ?? false)
        {
            Allergens = allergens,
            Prices = prices,
            Limits = limits,
            Cold = cold,
            Figures = figures,
            Stacking = new Stacking(form.Supports, form.TierBoard, form.Underlay) is var own && own == Stacking.Usual ? null : own,
            HouseCakes = [.. form.HouseCakes.SelectMany(f => (before?.HouseCakes ?? []).Where(c => c.Name == f.Was).Select(c => c with { Name = f.Name.Trim() }))],
        }, []);
    }

    /// <summary>The form filled with a shop.</summary>
    /// <param name="book">For each of its ingredients a pack may have a price.</param>
    public static ShopForm Form(Shop shop, Cookbook book) => new()
    {
        Prices = PricesReader.Form(shop.Prices, shop.Settings.Inches, book),
        Limits = LimitsForm.Of(shop.Limits),
        Cold = ColdForm.Of(shop.Cold),
        Figures = FiguresForm.Of(shop.Figures),
        Allergens = AllergensForm.Of(shop.Allergens),
        Supports = (shop.Stacking ?? Stacking.Usual).Supports,
        TierBoard = (shop.Stacking ?? Stacking.Usual).Board,
        Underlay = (shop.Stacking ?? Stacking.Usual).Underlay,
        Name = shop.Name,
        Zone = shop.Zone,
        Hours = WeeklyHours.Write(shop.Hours.Select(h => new Shift(h.Day, h.From, h.To))),
        Country = shop.Settings.Country,
        Inches = shop.Settings.Inches,
        Clock24 = shop.Settings.Clock24,
        Racks = Say(shop.RackPlaces),
        Benches = Say(shop.BenchPlaces),
        Turntables = Say(shop.Turntables),
        Version = shop.Version,
        HouseCakes = [.. shop.HouseCakes.Select(c => new HouseCakeForm { Was = c.Name, Name = c.Name })],
        LastHands = shop.Settings.LastHands is { } last ? WeeklyHours.Say(last) : "",
        Caps = WeeklyCaps.Write(shop.Settings.Caps ?? []),
        KeepHours = Say(shop.Settings.KeepHours),
        SmallCakes = MonthlyCakes.Write(shop.Settings.SmallCakes),
        Quiet = shop.Settings is { QuietFrom: { } from, QuietTo: { } to } ? $"{WeeklyHours.Say(from)}-{WeeklyHours.Say(to)}" : "",
        People = [.. shop.People.Select(p => new PersonForm { Id = p.Id, Name = p.Name, Picture = p.Picture, Role = p.Role, Skills = [.. p.Skills], Hours = WeeklyHours.Write(p.Shifts), Overtime = WeeklyHours.Write(p.Overtime) })],
        Ovens = [.. shop.Ovens.Select(o => new OvenForm { Id = o.Id, Name = o.Name, Kind = o.Kind, Decks = Say(o.Decks), Width = Say(o.Width.Centimetres), Depth = Say(o.Depth.Centimetres) })],
        Bowls = [.. shop.Bowls.Select(b => new BowlForm { Id = b.Id, Name = b.Name, Litres = Say(b.Litres), Batter = Say(b.Batter.Kilograms), Cream = Say(b.CreamMillilitres / 1000m) })],
        Shelves = [.. shop.Shelves.Select(s => new ShelfForm { Id = s.Id, Kind = s.Kind, Unit = s.Unit, Level = Say(s.Level), Width = Say(s.Width.Centimetres), Depth = Say(s.Depth.Centimetres), Clear = Say(s.Clear.Centimetres), PullsOut = s.PullsOut })],
    };

    private ShopSettings Settings(ShopForm form)
    {
        var last = form.LastHands.Trim().Length == 0 ? (LocalTime?)null : Hours.Read(form.LastHands);
        if (last is null && form.LastHands.Trim().Length > 0)
        {
            Wrong("last-hands", form.LastHands, "That is no hour of the day.", "Write 22:00, or leave it empty.");
        }

        var (caps, unread) = WeeklyCaps.Read(form.Caps);
        if (unread is not null)
        {
            Wrong("caps", unread, "This cap can't be read.", "Write Sat 2, Sun 1, each day once, or leave it empty.");
        }

        var (small, unclear) = MonthlyCakes.Read(form.SmallCakes);
        if (unclear is not null)
        {
            Wrong("small-cakes", unclear, "This number of small cakes can't be read.", "Write 6, or 6, May-Jul 10, at most 200, or leave it empty.");
        }

        var ends = form.Quiet.Split('-', '–');
        var quiet = ends.Length == 2 && Hours.Read(ends[0]) is { } from && Hours.Read(ends[1]) is { } to && from != to ? (From: from, To: to) : ((LocalTime From, LocalTime To)?)null;
        if (quiet is null && form.Quiet.Trim().Length > 0)
        {
            Wrong("quiet", form.Quiet, "These hours can't be read.", "Write 21:00-06:00, or leave it empty.");
        }

        return (before?.Settings ?? new ShopSettings()) with
        {
            Inches = form.Inches, Clock24 = form.Clock24, Country = form.Country, KeepHours = Whole("keep-hours", form.KeepHours, 1, 720), LastHands = last, Caps = caps.Count == 0 ? null : caps, SmallCakes = small, QuietFrom = quiet?.From, QuietTo = quiet?.To,
        };
    }

    private Person ReadPerson(PersonForm p, int at)
    {
        var field = $"person-{at + 1}";
        var name = Named($"{field}-name", p.Name, "This person has no name.", "Write it, or take the line out.");
        if (p.Skills.Count == 0)
        {
            Wrong($"{field}-skills", p.Name, "This person can do nothing yet.", "Tap what they can do.");
        }

        return new Person(
            p.Id.Length > 0 ? p.Id : IdOf(name, at), name, p.Picture, p.Role, [.. Skills.All.Where(p.Skills.Contains)],
            [.. Rows($"{field}-hours", p.Hours)], [.. Rows($"{field}-overtime", p.Overtime)]);
    }

    private Oven ReadOven(OvenForm o, int at)
    {
        var field = $"oven-{at + 1}";
        return new Oven(
            Kept(o.Id, "oven", at), Named($"{field}-name", o.Name, "This oven has no name.", "Write one."), o.Kind, Whole($"{field}-decks", o.Decks, 1, 20),
            Size($"{field}-width", o.Width, 20, 200), Size($"{field}-depth", o.Depth, 20, 200));
    }

    private Bowl ReadBowl(BowlForm b, int at)
    {
        var field = $"bowl-{at + 1}";
        return new Bowl(
            Kept(b.Id, "bowl", at), Named($"{field}-name", b.Name, "This bowl has no name.", "Write one."), Figure($"{field}-litres", b.Litres, 1, 200, "L"),
            Mass.FromKilograms(Figure($"{field}-batter", b.Batter, 0.2m, 100, "kg of batter")), (int)(Figure($"{field}-buttercream", b.Cream, 0.2m, 100, "L of buttercream") * 1000));
    }

    private Shelf ReadShelf(ShelfForm s, int at)
    {
        var field = $"shelf-{at + 1}";
        return new Shelf(
            Kept(s.Id, "shelf", at), s.Kind, Named($"{field}-in", s.Unit, "This shelf stands in nothing.", "Write Fridge 1 or the like."),
            Whole($"{field}-level", s.Level, 1, 50), Size($"{field}-width", s.Width, 15, 400), Size($"{field}-depth", s.Depth, 15, 400), Size($"{field}-clear", s.Clear, 5, 250), s.PullsOut);
    }

    private string IdOf(string name, int at)
    {
        var id = string.Concat(name.ToLowerInvariant().Where(char.IsAsciiLetterOrDigit));
        return id.Length == 0 || before?.PersonOf(id) is not null ? $"{id}{(before?.Version ?? 0) + 1}{at + 1}" : id;
    }

    private string Kept(string id, string kind, int at) => id.Length > 0 ? id : $"{kind}{(before is null ? "" : $"{before.Version + 1}")}{at + 1}";

    private IReadOnlyList<Shift> Rows(string field, string text)
    {
        var (rows, unread) = WeeklyHours.Read(text);
        if (unread is not null)
        {
            Wrong(field, unread, "These hours can't be read.", "Write Mon-Fri 06:00-14:00, Sat 07:00-13:00.");
        }

        return rows;
    }

    private string Named(string field, string text, string sentence, string remedy)
    {
        var name = text.Trim();
        if (name.Length == 0)
        {
            Wrong(field, text, sentence, remedy);
        }
        else if (name.Length > 80)
        {
            Wrong(field, name, $"A name of {name.Length} letters doesn't fit on a ticket; 80 do.", "Shorten it.");
        }

        return name;
    }

    private Length Size(string field, string text, decimal least, decimal most) => Length.FromCentimetres(Figure(field, text, least, most, "cm"));

    private decimal Figure(string field, string text, decimal least, decimal most, string unit)
    {
        if (decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n >= least && n <= most)
        {
            return n;
        }

        Wrong(field, text, string.Create(CultureInfo.InvariantCulture, $"A figure from {least} to {most} {unit} is needed."), "Measure inside and write it in figures.");
        return least;
    }

    private int Whole(string field, string text, int least, int most)
    {
        if (text.Trim().Length <= 6 && int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n >= least && n <= most)
        {
            return n;
        }

        Wrong(field, text, string.Create(CultureInfo.InvariantCulture, $"A whole number from {least} to {most} is needed."), "Count, and write it in figures.");
        return least;
    }

    private static string Say(decimal n) => n.ToString("0.##", CultureInfo.InvariantCulture);

    private void Wrong(string field, string value, string sentence, string remedy) =>
        problems.Add(new Problem(field, value.Length > 80 ? value[..80] : value, sentence, remedy));
}
