namespace Bakehouse.Web.Tests.TheWeek;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheWeek;
using NodaTime;

/// <summary>The drawn marks, without a browser.</summary>
public sealed class WeekPictureTests
{
    private static WeekPicture ByHand(int boxed, params string[] ticked) =>
        WeekPicture.Of(WeeksInHand.ByHand(boxed, ticked: ticked), WeeksInHand.Thursday, 0, 1224)!;

    public static TheoryData<string> Plans()
    {
        var plans = new TheoryData<string> { "sample" };
        foreach (var kind in new[] { "tiny", "home", "repair" })
        {
            foreach (var name in WeekFiles.Names(kind))
            {
                plans.Add(name + ".rule");
            }
        }

        plans.Add("small-080-fridge.rule");
        plans.Add("busy-050-fridge.rule");
        return plans;
    }

    [Theory]
    [InlineData(810, MarkKind.InTime, "30 min")] // 13:30, as much as is wanted
    [InlineData(815, MarkKind.Tight, "25 min")] // 13:35, under the buffer of 30
    [InlineData(820, MarkKind.Tight, "20 min")]
    [InlineData(840, MarkKind.Tight, "0 min")] // 14:00 sharp
    [InlineData(940, MarkKind.Late, "1 h 40 late")] // 15:40
    public void The_flag_says_in_time_tight_or_late(int boxed, MarkKind state, string says)
    {
        var row = Assert.Single(ByHand(boxed).Rows);

        Assert.Equal(state, row.Flag!.State);
        Assert.Equal("14:00", row.Flag.Time);
        Assert.Equal(says, row.Flag.Says);
    }

    [Fact]
    public void Blocks_bands_and_the_flag_lie_at_their_hours()
    {
        // Wed 14 to Sat 17, 6 to 20: 4 x 14.9 = 59.6 hours. (1224 - 96) / 59.6 = 18.926 px an hour; Thursday begins at 14.9 hours.
        var picture = ByHand(820);
        var row = picture.Rows[0];
        double Thu(double hour) => (14.9 + hour - 6) * 1128 / 59.6;

        Assert.Equal([Thu(8), Thu(11), Thu(13 + (20 / 60.0))], row.Blocks.Select(b => b.X), new Near());
        Assert.Equal([StepLook.Oven, StepLook.Hands, StepLook.Hands], row.Blocks.Select(b => b.Step.Look));
        Assert.Equal([("rack", Thu(9)), ("fridge", Thu(11.5))], row.Bands.OrderBy(b => b.X).Select(b => (b.Kind, Math.Round(b.X, 6))), new NearNamed());
        Assert.Equal(Thu(14), row.Flag!.Pole, 6);
        Assert.Equal(Thu(13 + (40 / 60.0)), row.SpareFrom!.Value, 6);
        Assert.Equal(Thu(10.7), picture.NowX!.Value, 6);
    }

    [Fact]
    public void Work_after_the_flag_is_late_and_what_is_ticked_is_done()
    {
        var row = ByHand(940, "bake", "coat").Rows[0];

        Assert.Equal([Ink.Done, Ink.Done, Ink.Late], row.Blocks.Select(b => b.Ink));
        Assert.True(row.Flag!.X >= row.Blocks[^1].X + row.Blocks[^1].Wide, "the flag stands behind the late work");
        Assert.Equal(Ink.Late, ByHand(940).Lanes[0].Blocks.Single(b => b.Step.Operation == "box").Ink);
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void Nothing_is_drawn_outside_the_picture(string plan)
    {
        foreach (var picture in Pictures(plan))
        {
            var (left, right) = (-0.001, picture.Width + 0.001);
            Assert.All(picture.Rows, r =>
            {
                Assert.All(r.Blocks, b => Inside(b, left, right, r.Y, r.Y + WeekPicture.RowHigh));
                Assert.All(r.Bands, b => Assert.True(b.X >= left && b.X + b.Wide <= right && b.Y >= r.Y && b.Y + b.High <= r.Y + WeekPicture.RowHigh, $"{r.Cake.Title} {b}"));
                Assert.True(r.Flag is null || (r.Flag.Pole >= left && r.Flag.X + 80 <= right + 4), $"{r.Cake.Title} {r.Flag}");
            });
            Assert.All(picture.Lanes, l => Assert.All(l.Blocks, b => Inside(b, left, right, l.Y, l.Y + l.High)));
            Assert.All(picture.Areas, a => Assert.All(a.Strips, s => Assert.True(s.X >= left && s.X + s.Wide <= right && s.Y >= a.Y && s.Y + s.High <= a.Y + a.High, $"{a.Name} {s}")));
        }
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void The_stack_is_as_high_as_the_places_taken_at_every_minute(string plan)
    {
        var state = State(plan);
        var at = Start(state);
        var picture = WeekPicture.Of(state, at, 0, 1224)!;
        foreach (var area in picture.Areas)
        {
            var taken = Taken(state, area.Area.Kind, plan == "sample");
            Assert.All(area.Area.Levels.Zip(area.Area.Levels.Skip(1)), p => Assert.Equal(p.First.To, p.Second.From));
            for (var t = picture.Axis.From; t < picture.Axis.To; t += Duration.FromMinutes(5))
            {
                var level = area.Area.Levels.Single(l => l.From <= t && t < l.To);
                Assert.Equal(taken(t), level.Sum);
                Assert.Equal(level.Sum * area.PxPerPlace, area.Strips.Where(s => Covers(picture, s, t)).Sum(s => s.High), 6);
            }
        }
    }

    [Fact]
    public void The_fullest_hour_is_named_and_a_fridge_too_full_says_so()
    {
        var state = WeeksInHand.ByHand(820);
        var area = WeekPicture.Of(state, WeeksInHand.Thursday, 0, 1224)!.Areas[0];
        Assert.Equal("fullest: 20 % of the shelves, Thu 11:30", area.Fullest);
        Assert.Empty(area.TooFull);

        var small = state with { Week = state.Week! with { Stores = [.. state.Week.Stores.Select(s => s with { Places = s.Kind == "fridge" ? 1 : s.Places })] } };
        Assert.Equal("100 % more than there is in the fridges, Thu 11:30 to Thu 13:20", Assert.Single(WeekPicture.Of(small, WeeksInHand.Thursday, 0, 1224)!.Areas[0].TooFull).Says);
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void The_table_tells_of_everything_that_is_drawn(string plan)
    {
        foreach (var picture in Pictures(plan))
        {
            var told = DayTable.Of(picture).SelectMany(d => d.Lines).ToList();
            var ids = told.Select(l => l.Of).ToHashSet();
            Assert.Equal(told.Count, ids.Count);
            Assert.Subset(ids, picture.Rows.SelectMany(r => r.Blocks).Concat(picture.Lanes.SelectMany(l => l.Blocks)).Select(b => b.Step.Id).ToHashSet());
            Assert.All(picture.Rows, r =>
            {
                var kinds = r.Cake.Waits.Where(w => ids.Contains(w.Id)).Select(w => w.Kind).ToHashSet();
                Assert.Subset(kinds, r.Bands.Select(b => b.Kind).ToHashSet());
                Assert.True(r.Flag is null || told.Any(l => l.Of == "flag " + r.Cake.Id && l.What.Contains(r.Flag.Says, StringComparison.Ordinal)));
            });
        }
    }

    [Fact]
    public void Strips_that_touch_differ_in_colour()
    {
        foreach (var plan in new[] { "sample", "home-080-fridge.rule", "small-080-fridge.rule" })
        {
            var state = State(plan);
            var area = AreaLane.Of(PlanFacts.Of(state, Start(state))!, "fridge", Start(state), Start(state) + Duration.FromDays(6));
            var colours = area.Colours();
            var alike = area.Levels.SelectMany(l => l.Parts.Zip(l.Parts.Skip(1))).Count(p => colours[p.First.Cake] == colours[p.Second.Cake]);
            Assert.Equal(0, alike);
        }
    }

    private static void Inside(Block b, double left, double right, double top, double foot) =>
        Assert.True(b.X >= left && b.X + b.Wide <= right && b.Y >= top && b.Y + b.High <= foot && b.Wide > 0 && b.High > 0, b.ToString());

    private static bool Covers(WeekPicture picture, Strip strip, Instant t)
    {
        var middle = picture.Axis.X(t + Duration.FromSeconds(150));
        return strip.X <= middle && middle < strip.X + strip.Wide;
    }

    private static BookState State(string plan) =>
        plan == "sample" ? WeeksInHand.Sample(WeeksInHand.Thursday) : WeeksInHand.Public(plan.Split('.')[0], plan);

    private static Instant Start(BookState state) => state.Shop!.IsSample && state.Orders.Count > 0 ? WeeksInHand.Thursday : state.Week!.Epoch + Duration.FromDays(2);

    private static IEnumerable<WeekPicture> Pictures(string plan)
    {
        var state = State(plan);
        return new[] { -1, 0, 1 }.SelectMany(later => new[] { 380.0, 1092, 1224 }.Select(width => WeekPicture.Of(state, Start(state), later, width)!));
    }

    /// <summary>Places taken, straight from the rows of plan and week and not from what the drawing reads.</summary>
    private static Func<Instant, int> Taken(BookState state, string kind, bool method)
    {
        var (week, plan) = (state.Week!, state.Wall!.From(state.Week!.Epoch));
        var starts = plan.Steps.ToDictionary(r => r.Step, r => r.Start);
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        var stores = week.Stores.Where(s => s.Kind == kind).Select(s => s.Id).ToHashSet();
        var stand = plan.Holds.Where(h => stores.Contains(h.Store)).Select(h => h.Hold).ToHashSet();
        // What has come to an end is no hold of the week any more; the method still names it.
        var holds = week.Holds.Concat(method ? state.Orders.Where(o => week.Orders.Any(w => w.Id == o.Id.ToString("N"))).SelectMany(o => Bakehouse.Domain.Methods.CakeSteps.Of(o, state.Shop!).Holds) : [])
            .DistinctBy(h => h.Id)
            .Where(h => stand.Contains(h.Id) && starts.ContainsKey(h.From) && starts.ContainsKey(h.To) && (h.If is null || plan.Choices.GetValueOrDefault(h.If.Choice) == h.If.Option))
            .Select(h => (From: week.Epoch + Duration.FromMinutes(starts[h.From] + minutes[h.From]), To: week.Epoch + Duration.FromMinutes(starts[h.To]), h.Places))
            .ToList();
        return t => holds.Where(h => h.From <= t && t < h.To).Sum(h => h.Places);
    }

    private sealed class Near : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-6;

        public int GetHashCode(double obj) => 0;
    }

    private sealed class NearNamed : IEqualityComparer<(string Kind, double X)>
    {
        public bool Equals((string Kind, double X) x, (string Kind, double X) y) => x.Kind == y.Kind && Math.Abs(x.X - y.X) < 1e-5;

        public int GetHashCode((string Kind, double X) obj) => 0;
    }
}
