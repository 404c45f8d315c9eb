namespace Bakehouse.Web.TheWeek;

using System.Buffers;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.Shell;

/// <summary>Markup of one cake's row and of its head.</summary>
internal static class RowInk
{
    private static readonly SearchValues<char> HexDigits = SearchValues.Create("0123456789abcdefABCDEF");

    /// <summary>Bands, dotted time to spare, blocks and flag, y counted from the top of all rows.</summary>
    public static string Row(CakeRow row)
    {
        var svg = new Svg();
        var spare = row.Y + 38;
        foreach (var band in row.Bands)
        {
            svg.Rect($"w-{(band.Kind == "van" ? "bench" : band.Kind)}", band.X, band.Y, band.Wide, band.High);
        }

        if (row is { SpareFrom: { } from, Flag: { } end })
        {
            svg.Path("w-spare", $"M{Svg.F(from)} {Svg.F(spare)}H{Svg.F(end.Pole)}");
        }

        foreach (var block in row.Blocks)
        {
            WeekInk.Block(svg, block);
        }

        if (row.Flag is { } flag)
        {
            Flag(svg, flag, row.Y);
        }

        return svg.ToString();
    }

    /// <summary>Mini cake at 1 px a centimetre, number and name, build. A narrow head leaves the drawing out.</summary>
    public static string Head(CakeRow row, double wide)
    {
        var svg = new Svg();
        var narrow = wide < WeekInk.HeadWide;
        var (x, number) = (narrow ? 8 : 66, row.Cake.Number);
        if (!narrow)
        {
            Mini(svg, row);
        }

        svg.Text("w-number", x, row.Y + 20, number);
        if (narrow)
        {
            return svg.Fitted("w-name", x, row.Y + 38, row.Cake.Name, wide - x - 4, 8.6).ToString();
        }

        var name = x + (number.Length * 9.8) + 5;
        return svg.Fitted("w-name", name, row.Y + 20, row.Cake.Name, wide - name - 2, 8.6).Text("w-build", x, row.Y + 38, row.Cake.Build).ToString();
    }

    private static void Mini(Svg svg, CakeRow row)
    {
        var foot = row.Y + 40;
        const double middle = 34;
        if (row.Cake.Order is { Stack.Count: 0, Beside: [var batch, ..] })
        {
            Cupcakes(svg, batch, row.Y + 40);
            return;
        }

        var tiers = row.Cake.Order?.Stack ?? [];
        var tall = (double)tiers.Sum(t => t.Height.Centimetres);
        var scale = tall > 36 ? 36 / tall : 1;
        foreach (var tier in tiers)
        {
            var (wide, high) = ((double)tier.Shape.Wide.Centimetres * scale, (double)tier.Height.Centimetres * scale);
            var colour = tier.Colours.Count > 0 ? tier.Colours.MaxBy(c => c.Share)!.Swatch : "";
            foot -= high;
            svg.Raw($"<rect class=\"w-mini\" x=\"{Svg.F(middle - (wide / 2))}\" y=\"{Svg.F(foot)}\" width=\"{Svg.F(wide)}\" height=\"{Svg.F(high)}\" rx=\"1\"{Fill(colour)}/>");
        }

        var board = tiers.Count == 0 ? 26 : ((double)tiers.Max(t => t.Shape.Wide.Centimetres) * scale) + 6;
        svg.Path("w-board", $"M{Svg.F(middle - (board / 2))} {Svg.F(row.Y + 40.8)}h{Svg.F(board)}");
    }

    /// <summary>Three in a row, twice as large as to scale.</summary>
    private static void Cupcakes(Svg svg, CakeTier batch, double foot)
    {
        var colour = batch.Colours.Count > 0 ? batch.Colours.MaxBy(c => c.Share)!.Swatch : "";
        foreach (var x in new[] { 12, 28, 44 })
        {
            svg.Path("w-board", $"M{Svg.F(x)} {Svg.F(foot - 8)}l2 8h8l2 -8z");
            svg.Raw($"<path class=\"w-mini\" d=\"M{Svg.F(x - 1)} {Svg.F(foot - 8)}q0 -9 7 -9t7 9z\"{Fill(colour)}/>");
        }
    }

    /// <summary>Only a colour as #RRGGBB becomes markup; else the style sheet's own.</summary>
    private static string Fill(string colour) =>
        colour.Length == 7 && colour[0] == '#' && colour.AsSpan(1).IndexOfAnyExcept(HexDigits) < 0 ? $" fill=\"{colour}\"" : "";

    private static void Flag(Svg svg, Flag flag, double y)
    {
        var (x, top, wide) = (flag.X, y + 3, (flag.Time.Length * 8.8) + 13);
        if (flag.State == MarkKind.Late)
        {
            svg.Path("f-late-pole", $"M{Svg.F(flag.Pole)} {Svg.F(y + 3)}V{Svg.F(y + 43)}")
                .Rect("f-late", x + 1, top, wide - 2, 20)
                .Text("f-late-time", x + (wide / 2), top + 15.4, flag.Time)
                .Raw($"<g transform=\"translate({Svg.F(x + wide + 4)} {Svg.F(top + 1)}) scale(.75)\"><rect class=\"f-tile\" x=\"1.5\" y=\"1.5\" width=\"21\" height=\"21\" rx=\"4\"/><rect class=\"f-tile-bar\" x=\"6\" y=\"10\" width=\"12\" height=\"4\" rx=\"1\"/></g>")
                .Text("f-late-says", x + 1, y + 41, flag.Says);
            return;
        }

        var tight = flag.State == MarkKind.Tight;
        svg.Path("f-pole", $"M{Svg.F(x)} {Svg.F(top)}V{Svg.F(y + 43)}")
            .Path(tight ? "f-tight" : "f-ink", $"M{Svg.F(x)} {Svg.F(top)}h{Svg.F(wide)}l-6 10 6 10h-{Svg.F(wide)}z")
            .Text(tight ? "f-tight-time" : "f-time", x + ((wide - 4) / 2), top + 15.4, flag.Time)
            .Text("f-says", x + 6, y + 41, flag.Says);
        if (tight)
        {
            svg.Raw($"<g class=\"f-slice\" transform=\"translate({Svg.F(x + wide + 5)} {Svg.F(top + 1)}) scale(.75)\"><path d=\"M11 13V2.9A10.1 10.1 0 1 0 21.1 13z\"/><path d=\"M14 10V1.9A8.4 8.4 0 0 1 22.1 10z\"/></g>");
        }
    }
}
