namespace Bakehouse.Domain.Sheets;

using System.Text.Encodings.Web;
using System.Text.Json;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>A cake as a file asks for it.</summary>
/// <param name="Order">Its tiers and all that a sheet goes by; who ordered it is not read.</param>
public sealed record SheetAsked(Order Order, CakeFigures Figures, SheetChoices Choices);

/// <summary>
/// Reads an order as the book keeps it, or as somebody writes it by hand, and writes its sheet. Sizes are millimetres, shares 0 to 1.
/// Beside the order there may be "figures" (<see cref="CakeFigures"/>, densities in grams per millilitre) and "choices" (<see cref="SheetChoices"/> by
/// name). What a sheet doesn't need may be left out. Everything wrong is told in one list, each with its value and what to do.
/// </summary>
public static class SheetFile
{
    private static readonly JsonSerializerOptions Indented = new(JsonSerializerDefaults.Web) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The cake, or null and every problem found.</summary>
    public static (SheetAsked? Asked, IReadOnlyList<Problem> Problems) Read(string text)
    {
        var problems = new List<Problem>();
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text);
        }
        catch (JsonException broken)
        {
            List<Problem> commas = [.. JsonRow.DecimalCommas(text)];
            return (null, commas.Count > 0 ? commas : [new Problem("file", Problem.Shown(text), $"This is not JSON: {broken.Message}", "Write the file again.")]);
        }

        using (document)
        {
            var root = new JsonRow(document.RootElement, "", problems);
            if (!root.IsObject)
            {
                return (null, [new Problem("file", Problem.Shown(text), "This is no order.", "Put the order's fields in curly brackets.")]);
            }

            var order = new AskedOrder(root).Order();
            var asked = new SheetAsked(order, new AskedFigures(root).Figures(), AskedFigures.Choices(root));
            if (problems.Count == 0)
            {
                problems.AddRange(BuildProblems.Of(order.Tiers, asked.Figures));
            }

            return (problems.Count == 0 ? asked : null, problems);
        }
    }

    /// <summary>The sheet as text: camel-case names, indented.</summary>
    public static string Write(WrittenSheet sheet) => JsonSerializer.Serialize(sheet, Indented);
}
