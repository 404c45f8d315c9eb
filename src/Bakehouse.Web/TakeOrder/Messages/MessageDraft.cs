namespace Bakehouse.Web.TakeOrder.Messages;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>Puts what was read into the order page; what was typed there already stays.</summary>
public static class MessageDraft
{
    /// <summary>Fills the blank fields.</summary>
    public static void Fill(OrderForm form, MessageRead read, Shop shop)
    {
        var words = Shell.Words.Of(shop);
        form.Day = Blank(form.Day, read.Day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture));
        form.Hour = Blank(form.Hour, read.Hour is { } hour ? words.Time(hour) : null);
        form.Count = Blank(form.Count, read.Count?.ToString(CultureInfo.InvariantCulture));
        form.Name = Blank(form.Name, read.Name);
        form.Phone = Blank(form.Phone, read.Phone);
        form.Inscription = Blank(form.Inscription, read.Inscription);
        form.Notes = Blank(form.Notes, read.Text);
        if (read.Way == Way.Deliver)
        {
            (form.Way, form.Address) = (Way.Deliver, Blank(form.Address, read.Address));
        }

        if (form.Allergies == AllergyKind.NotAsked && read.AllergyWords.Length > 0)
        {
            (form.Allergies, form.Avoid, form.AllergyWords) = (AllergyKind.Avoid, [.. read.Avoid], read.AllergyWords);
        }

        if (form.IsUnbuilt && Build(form, read, shop) is { } build)
        {
            form.Tiers = [.. build.Select(across => Tier(across, read))];
        }
    }

    private static string Blank(string typed, string? read) => typed.Trim().Length > 0 ? typed : read ?? "";

    /// <summary>The sizes that were named; else the smallest usual build of so many tiers, or for so many. Top first; null if neither was said.</summary>
    private static IReadOnlyList<int>? Build(OrderForm form, MessageRead read, Shop shop)
    {
        if (read.Sizes.Count > 0)
        {
            return read.Sizes;
        }

        var inches = shop.Settings.Inches;
        var usual = Builds.Common(inches).Where(b => read.TierCount is null || b.Count == read.TierCount)
            .OrderBy(b => Builds.Sheet(b, inches, CakeFigures.Of(shop)).Portions(form.Cut)).ToList();
        return read.Count is { } count ? usual.Find(b => Builds.Sheet(b, inches, CakeFigures.Of(shop)).Portions(form.Cut) >= count) ?? usual.LastOrDefault(_ => read.TierCount is not null)
            : read.TierCount is not null ? usual.FirstOrDefault() : null;
    }

    private static TierForm Tier(int across, MessageRead read)
    {
        var tier = new TierForm { Diameter = across.ToString(CultureInfo.InvariantCulture) };
        (tier.Sponge, tier.Filling) = (read.Sponge ?? tier.Sponge, read.Filling ?? tier.Filling);
        return tier;
    }
}
