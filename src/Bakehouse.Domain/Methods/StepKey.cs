namespace Bakehouse.Domain.Methods;

using System.Globalization;

/// <summary>
/// Who a step is, whatever the plan does with it: order, tier (or the whole cake), operation, ordinal. Editing size,
/// colour or date keeps the keys, so a tick is never lost. As text: order.tier.operation.ordinal, with ids as 32 hex digits
/// and "cake" for the whole cake.
/// </summary>
/// <param name="Tier">Null for the whole cake.</param>
/// <param name="Operation">Lower-case word of the method, e.g. bake.</param>
/// <param name="Ordinal">1 and up.</param>
public readonly record struct StepKey(Guid Order, Guid? Tier, string Operation, int Ordinal)
{
    /// <inheritdoc/>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Order:N}.{Tier?.ToString("N") ?? "cake"}.{Operation}.{Ordinal}");

    /// <summary>Reads what <see cref="ToString"/> wrote; null if the text is none.</summary>
    public static StepKey? Parse(string text)
    {
        var parts = text.Split('.');
        if (parts.Length != 4
            || !Guid.TryParseExact(parts[0], "N", out var order)
            || !int.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out var ordinal))
        {
            return null;
        }

        if (parts[1] == "cake")
        {
            return new StepKey(order, null, parts[2], ordinal);
        }

        return Guid.TryParseExact(parts[1], "N", out var tier) ? new StepKey(order, tier, parts[2], ordinal) : null;
    }
}
