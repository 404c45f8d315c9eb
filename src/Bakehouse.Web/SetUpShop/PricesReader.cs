namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;

/// <summary>Makes prices of what was typed; each problem goes to the list with the id of its field.</summary>
/// <param name="inches">True if sizes of boards are typed in inches.</param>
/// <param name="before">Packs of ingredients that are in no form stay as they are.</param>
internal sealed class PricesReader(bool inches, ShopPrices? before, List<Problem> problems)
{
    /// <summary>The prices, or null if nothing at all was typed.</summary>
    public ShopPrices? Read(PricesForm form)
    {
        var prices = new ShopPrices
        {
            Wage = Amount("wage", form.Wage),
            OverheadAYear = Amount("overhead", form.Overhead),
            OrdersAYear = Orders(form.Orders),
            MarkUp = Percent("mark-up", form.MarkUp),
            LeastMarkUp = Percent("least-mark-up", form.LeastMarkUp),
            Step = Step(form.Step),
            SupportEach = Amount("support-price", form.Support),
            RodEach = Amount("rod-price", form.Rod),
            CupcakePack = Amount("cupcake-pack", form.CupcakePack),
            Boards = Sizes("board-prices", form.Boards),
            Drums = Sizes("drum-prices", form.Drums),
            Boxes = Sizes("box-prices", form.Boxes),
            Packs = [.. form.Packs.SelectMany(Pack), .. Unseen(form)],
        };
        prices = prices with { List = new PriceList([.. form.Portions.SelectMany(Portions)], [.. Decoration(form)], Amount("least-price", form.Least) ?? 0, prices.Step)
        {
            FalseTier = Amount("false-tier-price", form.FalseTier), DripTier = Amount("drip-price", form.Drip), PasteShare = Percent("paste-share", form.Paste), Cupcake = Amount("cupcake-price", form.Cupcake),
        } };
        if (prices.LeastMarkUp > prices.MarkUp)
        {
            Wrong("least-mark-up", form.LeastMarkUp, "It is above the usual mark-up.", "Make it smaller, or the mark-up larger.");
        }

        return IsBlank(form) && prices.Packs.Count == 0 ? null : prices;
    }

    /// <summary>The form filled with prices, a row for each ingredient of the cookbook.</summary>
    public static PricesForm Form(ShopPrices? prices, bool inches, Cookbook book)
    {
        var p = prices ?? ShopPrices.None;
        return new PricesForm
        {
            Wage = Say(p.Wage),
            Overhead = Say(p.OverheadAYear),
            Orders = p.OrdersAYear?.ToString(CultureInfo.InvariantCulture) ?? "",
            MarkUp = Say(p.MarkUp * 100),
            LeastMarkUp = Say(p.LeastMarkUp * 100),
            Step = Say(p.Step),
            Support = Coins(p.SupportEach),
            Rod = Coins(p.RodEach),
            CupcakePack = Coins(p.CupcakePack),
            Cupcake = Coins(p.List.Cupcake),
            Boards = Say(p.Boards, inches),
            Drums = Say(p.Drums, inches),
            Boxes = Say(p.Boxes, inches),
            Least = p.List.Least > 0 ? Say(p.List.Least) : "",
            Portions = [.. Enum.GetValues<Finish>().Select(f => new PortionPriceForm { Finish = f, Dessert = Coins(Each(p, f, Cut.Dessert)), Coffee = Coins(Each(p, f, Cut.Coffee)) })],
            Medium = Say(Added(p, Bakehouse.Domain.Orders.Decoration.Medium)),
            Rich = Say(Added(p, Bakehouse.Domain.Orders.Decoration.Rich)),
            FalseTier = Coins(p.List.FalseTier),
            Drip = Coins(p.List.DripTier),
            Paste = Say(p.List.PasteShare * 100),
            Packs = [.. book.Ingredients.OrderBy(i => i.Name, StringComparer.Ordinal).Select(i => PackForm(i, p.Packs.FirstOrDefault(k => k.Ingredient == i.Id)))],
        };
    }

    private static bool IsBlank(PricesForm f) => f.Packs.All(p => p.Grams.Trim().Length + p.Price.Trim().Length == 0) && f.Portions.All(p => p.Dessert.Trim().Length + p.Coffee.Trim().Length == 0)
        && new[] { f.Wage, f.Overhead, f.Orders, f.MarkUp, f.LeastMarkUp, f.Support, f.Rod, f.Boards, f.Drums, f.Boxes, f.Least, f.Medium, f.Rich, f.FalseTier, f.Drip, f.Paste, f.Cupcake, f.CupcakePack }.All(t => t.Trim().Length == 0);

    private static decimal? Each(ShopPrices prices, Finish finish, Cut cut) => prices.List.Portions.FirstOrDefault(r => r.Finish == finish && r.Cut == cut)?.Each;

    private static decimal? Added(ShopPrices prices, Decoration decoration) => prices.List.Decorations.FirstOrDefault(d => d.Decoration == decoration)?.Share * 100;

    private static PackPriceForm PackForm(Ingredient ingredient, PackPrice? pack) =>
        new() { Ingredient = ingredient.Id, Name = ingredient.Name, Grams = Say(pack?.Pack.Grams), Price = Coins(pack?.Price) };

    private IEnumerable<PackPrice> Unseen(PricesForm form) => (before?.Packs ?? []).Where(p => !form.Packs.Any(f => f.Ingredient == p.Ingredient));

    private IEnumerable<PackPrice> Pack(PackPriceForm form)
    {
        var field = $"pack-{form.Ingredient}";
        if (form.Grams.Trim().Length == 0 && form.Price.Trim().Length == 0)
        {
            return [];
        }

        var grams = Figure(field, form.Grams, 0.1m, 1_000_000, "g in the pack");
        var price = Figure(field, form.Price, 0, 100_000, "of money");
        return grams is { } g && price is { } p ? [new PackPrice(form.Ingredient, Mass.FromGrams(g), p)] : [];
    }

    private IEnumerable<PortionPrice> Portions(PortionPriceForm form)
    {
        var field = $"portion-{form.Finish.ToString().ToLowerInvariant()}";
        return new[] { (Cut.Dessert, Amount(field, form.Dessert)), (Cut.Coffee, Amount(field, form.Coffee)) }
            .Where(p => p.Item2 is not null).Select(p => new PortionPrice(form.Finish, p.Item1, p.Item2!.Value));
    }

    private IEnumerable<DecorationPrice> Decoration(PricesForm form) =>
        new[] { (Bakehouse.Domain.Orders.Decoration.Medium, Percent("decoration-medium", form.Medium)), (Bakehouse.Domain.Orders.Decoration.Rich, Percent("decoration-rich", form.Rich)) }
            .Where(d => d.Item2 is not null).Select(d => new DecorationPrice(d.Item1, d.Item2!.Value));

    private IReadOnlyList<SizePrice> Sizes(string field, string text)
    {
        var rows = new List<SizePrice>();
        foreach (var row in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (row.Split('=', StringSplitOptions.TrimEntries) is [var size, var price] && Number(size) is { } s and > 0 and <= 200 && Number(price) is { } p and <= 100_000)
            {
                rows.Add(new SizePrice(inches ? Length.FromInches(s) : Length.FromCentimetres(s), p));
            }
            else
            {
                Wrong(field, row, "This size and price can't be read.", "Write 6 = 0.45; 8 = 0.60, or leave it empty.");
            }
        }

        return rows;
    }

    private int? Orders(string text) => Figure("orders-a-year", text, 1, 100_000, "orders") is not { } orders ? null : (int)decimal.Truncate(orders);

    private decimal Step(string text) => text.Trim().Length == 0 ? 1 : Figure("price-step", text, 0.01m, 100, "of money") ?? 1;

    private decimal? Amount(string field, string text) => Figure(field, text, 0, 10_000_000, "of money");

    private decimal? Percent(string field, string text) => Figure(field, text, 0, 1000, "%") / 100;

    /// <summary>Null if nothing is typed, or what is typed is wrong, which is then told.</summary>
    private decimal? Figure(string field, string text, decimal least, decimal most, string unit)
    {
        if (text.Trim().Length == 0 && !field.StartsWith("pack-", StringComparison.Ordinal))
        {
            return null;
        }

        if (Number(text) is { } number && number >= least && number <= most)
        {
            return number;
        }

        Wrong(field, text, string.Create(CultureInfo.InvariantCulture, $"A figure from {least} to {most} {unit} is needed."), "Write it in figures, such as 12.50.");
        return null;
    }

    private static decimal? Number(string text) =>
        text.Trim().Length <= 12 && decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) ? n : null;

    private void Wrong(string field, string value, string sentence, string remedy) => problems.Add(new Problem(field, Problem.Shown(value), sentence, remedy));

    private static string Say(decimal? number) => number?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";

    private static string Coins(decimal? amount) => amount?.ToString("0.00##", CultureInfo.InvariantCulture) ?? "";

    private static string Say(IReadOnlyList<SizePrice> sizes, bool inches) =>
        string.Join("; ", sizes.OrderBy(s => s.Size).Select(s => $"{Say(inches ? s.Size.Inches : s.Size.Centimetres)} = {s.Price.ToString("0.00", CultureInfo.InvariantCulture)}"));
}
