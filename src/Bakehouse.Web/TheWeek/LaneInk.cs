namespace Bakehouse.Web.TheWeek;

/// <summary>Markup of the lanes under the rows and of their heads.</summary>
internal static class LaneInk
{
    /// <summary>People, ovens, mixers, then fridges and freezer as stacked areas.</summary>
    public static string Lanes(WeekPicture picture)
    {
        var svg = new Svg();
        WeekInk.Ground(svg, picture, picture.LanesHigh);
        foreach (var lane in picture.Lanes)
        {
            foreach (var (x, wide) in lane.Off)
            {
                svg.Rect("w-off", x, lane.Y, wide, lane.High);
            }

            svg.Path("w-row", $"M0 {Svg.F(lane.Y + lane.High)}H{Svg.F(picture.Width)}");
            foreach (var chore in lane.Chores)
            {
                svg.Rect("w-chore", chore.X, chore.Y, chore.Wide, chore.High, 3);
                if (chore.Name.Length > 0)
                {
                    svg.Text("w-chore-name", chore.X + (chore.Wide / 2), chore.Y + (chore.High / 2) + 5.4, chore.Name);
                }
            }

            foreach (var block in lane.Blocks)
            {
                svg.Open(WeekInk.Of(picture, block.Step.Cake));
                WeekInk.Block(svg, block);
                svg.Close();
            }
        }

        foreach (var area in picture.Areas)
        {
            Area(svg, picture, area);
        }

        return svg.Raw(WeekInk.Now(picture, picture.LanesHigh)).ToString();
    }

    /// <summary>Names and second lines.</summary>
    public static string Heads(WeekPicture picture, double wide)
    {
        var svg = new Svg();
        var left = wide < WeekInk.HeadWide ? 8 : 16;
        foreach (var lane in picture.Lanes)
        {
            var middle = lane.Y + (lane.High / 2) + 5.4;
            svg.Fitted("w-lane", left, middle, lane.Name, wide - left - 4, 9);
            if (wide >= WeekInk.HeadWide && lane.Below.Length > 0)
            {
                svg.Text("w-below w-right", wide - 12, middle, lane.Below);
            }

            svg.Path("w-row", $"M{left} {Svg.F(lane.Y + lane.High)}H{Svg.F(wide)}");
        }

        foreach (var area in picture.Areas)
        {
            var middle = area.Area.Fullest is null ? area.Y + (area.High / 2) + 5.4 : area.Y + 30;
            svg.Text("w-lane", left, middle, area.Name).Text(wide < WeekInk.HeadWide ? "w-below w-left" : "w-below w-right", wide < WeekInk.HeadWide ? left : wide - 12, wide < WeekInk.HeadWide ? middle + 18 : middle, area.Below);
            svg.Path("w-row", $"M{left} {Svg.F(area.Y + area.High)}H{Svg.F(wide)}");
        }

        return svg.ToString();
    }

    private static void Area(Svg svg, WeekPicture picture, AreaDrawing area)
    {
        svg.Path("w-row", $"M0 {Svg.F(area.Y + area.High)}H{Svg.F(picture.Width)}");
        if (area.Area.Fullest is not { } fullest)
        {
            svg.Text("w-nothing", 8, area.Y + (area.High / 2) + 5.4, area.Fullest);
            return;
        }

        foreach (var strip in area.Strips)
        {
            svg.Open(WeekInk.Of(picture, strip.Cake)).Rect($"s s{strip.Colour}", strip.X, strip.Y, strip.Wide, strip.High);
            if (strip.FitsNumber)
            {
                svg.Text("s-text", strip.X + (strip.Wide / 2), strip.Y + (strip.High / 2) + 5.4, strip.Number);
            }

            svg.Close();
        }

        foreach (var (x, wide, high) in area.Full)
        {
            svg.Rect("w-chore", x, area.LineY, wide, high);
        }

        svg.Path("w-edge", "M" + string.Join('L', area.Top.Select(p => $"{Svg.F(p.X)} {Svg.F(p.Y)}")))
            .Path("w-all", $"M0 {Svg.F(area.LineY)}H{Svg.F(picture.Axis.Width)}");
        var top = area.Base - (area.PxPerPlace * fullest.Sum);
        foreach (var (x, wide, _) in area.TooFull)
        {
            svg.Rect("w-over", x, top, wide, area.LineY - top);
        }

        svg.Text("w-fullest", area.FullestX, area.Y + 17, area.Fullest);
    }
}
