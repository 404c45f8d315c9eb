namespace Bakehouse.Web.TheWeek;

using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Turns the picture into markup: ruler, rows, lanes, and the heads to their left. Classes carry colour and weight.</summary>
internal static class WeekInk
{
    /// <summary>Px of the column of heads.</summary>
    public const double HeadWide = 188;

    private const double NowHalf = 47;

    /// <summary>Px of the column of heads on a phone.</summary>
    public const double NarrowHead = 96;

    /// <summary>Hatches: they differ in shape, so grey print tells them apart.</summary>
    public const string Patterns =
        """
        <defs>
        <pattern id="wk-rack" width="7" height="8" patternUnits="userSpaceOnUse"><path class="h-rack" d="M-1 9L8-1M-4.5 5L1-1M6 9L11 4"/></pattern>
        <pattern id="wk-fridge" width="4" height="8" patternUnits="userSpaceOnUse"><path class="h-fridge" d="M2 0V8"/></pattern>
        <pattern id="wk-freezer" width="8" height="8" patternUnits="userSpaceOnUse"><path class="h-freezer" d="M0 0L8 8M8 0L0 8"/></pattern>
        <pattern id="wk-cool" width="5" height="4" patternUnits="userSpaceOnUse"><circle class="h-cool" cx="2" cy="2" r="1.2"/></pattern>
        <pattern id="wk-bench" width="9" height="8" patternUnits="userSpaceOnUse"><path class="h-bench" d="M0 4H5.5"/></pattern>
        <pattern id="wk-chore" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="h-chore" d="M0 0V6"/></pattern>
        <pattern id="wk-late" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="h-late" width="6" height="6"/><path class="h-stripe" d="M0 0V6"/></pattern>
        <pattern id="wk-over" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="h-over" d="M1 0V6"/></pattern>
        </defs>
        """;

    /// <summary>Class of everything that belongs to that cake: it lights up with its row.</summary>
    public static string Of(WeekPicture picture, string cake)
    {
        for (var i = 0; i < picture.Rows.Count; i++)
        {
            if (picture.Rows[i].Cake.Id == cake)
            {
                return $"c c{i}";
            }
        }

        return "c";
    }

    /// <summary>Days, hours, folds and now.</summary>
    public static string Ruler(WeekPicture picture)
    {
        var svg = new Svg().Raw(Patterns);
        Ground(svg, picture, WeekPicture.RulerHigh, hours: false);
        var foot = WeekPicture.RulerHigh - 1;
        var words = Words.Of(picture.Facts.Shop);
        foreach (var day in picture.Axis.Stretches.Where(s => s.Day is not null))
        {
            svg.Text("w-day", day.X + 5, 19, words.Day(day.Day!.Value)[..^4]);
            for (var hour = 0; hour <= (day.To - day.From).TotalHours; hour++)
            {
                var at = day.From + Duration.FromHours(hour);
                var x = picture.Axis.X(at);
                var clock = words.Local(at).Hour;
                svg.Path("w-tick", $"M{Svg.F(x)} {Svg.F(foot)}v-{(clock % 4 == 0 ? 9 : 5)}");
                if (clock is 8 or 12 or 16 && !(picture.NowX is { } near && Math.Abs(near - x) < NowHalf + 10))
                {
                    svg.Text("w-hour", x, 43, words.Time(new LocalTime(clock, 0))[..^3].TrimStart('0').TrimEnd(':'));
                }
            }
        }

        svg.Path("w-line", $"M0 {Svg.F(foot)}H{Svg.F(picture.Width)}");
        if (picture.NowX is { } now)
        {
            var says = $"now {words.Time(words.Local(picture.Facts.Now).TimeOfDay)}";
            var middle = Math.Clamp(now, NowHalf, picture.Width - NowHalf);
            svg.Path("w-now", $"M{Svg.F(now)} 46V{Svg.F(WeekPicture.RulerHigh)}")
                .Rect("w-now-plate", middle - NowHalf, 26, NowHalf * 2, 23, 5)
                .Text("w-now-text", middle, 42.5, says);
        }

        return svg.ToString();
    }

    /// <summary>What lies under all marks of a piece: folds, past, hour lines.</summary>
    public static void Ground(Svg svg, WeekPicture picture, double high, bool hours = true)
    {
        if (picture.NowX is { } now)
        {
            svg.Rect("w-past", 0, 0, now, high);
        }

        foreach (var s in picture.Axis.Stretches)
        {
            if (s.Day is null)
            {
                svg.Rect("w-fold", s.X, 0, s.Width, high).Path("w-fold-line", $"M{Svg.F(s.X)} 0V{Svg.F(high)}M{Svg.F(s.X + s.Width)} 0V{Svg.F(high)}");
                continue;
            }

            var words = Words.Of(picture.Facts.Shop);
            for (var at = s.From; hours && at < s.To; at += Duration.FromHours(1))
            {
                if (words.Local(at).Hour is 8 or 12 or 16)
                {
                    svg.Path("w-four", $"M{Svg.F(picture.Axis.X(at))} 0V{Svg.F(high)}");
                }
            }
        }
    }

    /// <summary>The now-line through a piece.</summary>
    public static string Now(WeekPicture picture, double high) =>
        picture.NowX is { } now ? new Svg().Path("w-now", $"M{Svg.F(now)} 0V{Svg.F(high)}").ToString() : "";

    /// <summary>A pin with its point on the upper edge of what it holds.</summary>
    private static void Pin(Svg svg, double x, double y) =>
        svg.Path("w-pin", $"M{Svg.F(x)} {Svg.F(y + 5)}V{Svg.F(y - 1)}M{Svg.F(x - 4.5)} {Svg.F(y - 1)}H{Svg.F(x + 4.5)}L{Svg.F(x + 3)} {Svg.F(y - 4)}V{Svg.F(y - 8)}H{Svg.F(x - 3)}V{Svg.F(y - 4)}Z");

    /// <summary>One block as it is drawn.</summary>
    public static void Block(Svg svg, Block block)
    {
        var ink = block.Ink switch { Ink.Done => " is-done", Ink.Late => " is-late", _ => "" };
        var (x, y, wide, high) = (block.X, block.Y, block.Wide, block.High);
        switch (block.Step.Look)
        {
            case StepLook.Oven:
                svg.Rect("b-oven" + ink, x, y + 0.8, wide, high - 1.6, Math.Min(4, wide / 3));
                if (wide > 9 && high > 14)
                {
                    svg.Path("b-bars" + ink, $"M{Svg.F(x + 3.5)} {Svg.F(y + (high * 0.32))}H{Svg.F(x + wide - 3.5)}M{Svg.F(x + 3.5)} {Svg.F(y + (high * 0.68))}H{Svg.F(x + wide - 3.5)}");
                }

                break;
            case StepLook.Mixer:
                svg.Rect("b-mixer" + ink, x, y + 0.8, wide, high - 1.6, Math.Min(wide / 2, 9));
                break;
            case StepLook.Clean:
                svg.Rect("b-clean" + ink, x, y + 0.8, wide, high - 1.6, Math.Min(3, wide / 3));
                break;
            default:
                svg.Rect("b-hands" + ink, x, y, wide, high, Math.Min(4, wide / 3));
                break;
        }

        if (block.Step.Pinned)
        {
            Pin(svg, x + Math.Min(wide / 2, 7), y);
        }

        if (block.Text.Length > 0)
        {
            svg.Text("b-text", x + (wide / 2), y + (high / 2) + 5.4, block.Text);
        }
    }
}
