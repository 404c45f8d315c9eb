namespace Bakehouse.Web.TakeOrder.Messages;

using System.Globalization;

/// <summary>Numbers as they are written in a message: figures or words.</summary>
internal static class NumberWords
{
    private static readonly Dictionary<string, int> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["one"] = 1, ["single"] = 1, ["two"] = 2, ["three"] = 3, ["four"] = 4, ["five"] = 5, ["ten"] = 10, ["twelve"] = 12, ["a dozen"] = 12,
        ["fifteen"] = 15, ["twenty"] = 20, ["twenty five"] = 25, ["thirty"] = 30, ["thirty five"] = 35, ["forty"] = 40, ["fifty"] = 50, ["sixty"] = 60,
        ["seventy"] = 70, ["eighty"] = 80, ["ninety"] = 90, ["a hundred"] = 100, ["one hundred"] = 100,
    };

    /// <summary>The number, or 0 if it is none that is known here.</summary>
    public static int Read(string said) =>
        int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : Words.GetValueOrDefault(said.Replace('-', ' '));
}
