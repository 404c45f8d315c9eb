namespace Bakehouse.Domain.Tests.Planning;

using System.Text.Json.Nodes;
using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>Weeks and plans as files: what goes in comes out, and a broken file is told whole.</summary>
public sealed class WeekFileTests
{
    public static TheoryData<string> Weeks => [.. new[] { "tiny", "home", "small", "busy", "ask", "repair" }.SelectMany(WeekFiles.Names)];

    [Theory]
    [MemberData(nameof(Weeks))]
    public void A_week_written_and_read_again_is_the_same(string name)
    {
        var week = WeekFiles.Week(name);

        var (again, problems) = WeekFile.Read(WeekFile.Write(week));

        Assert.Empty(problems);
        Assert.Equivalent(week, again, strict: true);
        Assert.Equal(name.StartsWith("repair", StringComparison.Ordinal), again!.Repair);
    }

    [Fact]
    public void What_may_be_left_out_has_its_default_and_what_is_unknown_is_passed_over()
    {
        var file = Changed(f =>
        {
            f["made"] = new JsonObject { ["by"] = "anybody" };
            f["colour"] = "green";
            f.Remove("tick");
            f.Remove("now");
        });

        var (week, problems) = WeekFile.Read(file);

        Assert.Empty(problems);
        Assert.Equal((5, 0, 0, false), (week!.Grain, week.Now, week.FreeFrom, week.Repair));
        Assert.Equal(("", 1, 0), (week.Steps[1].Tier, week.Steps[1].Count, week.Steps[1].Tools.Count));
        Assert.Equal((1, 0), (week.Holds[0].Places, week.Holds[0].Height));
        Assert.Equal((1, 0), (week.Orders[0].Rank, week.Orders[0].Buffer));
        Assert.Null(week.Reference);
        Assert.Empty(week.Choices);
        Assert.False(week.People[0].Share);
    }

    /// <summary>Fifteen faults in one file: fields of the wrong kind beside names, spans and grains that do not fit.</summary>
    [Fact]
    public void A_broken_week_is_told_whole_in_one_list()
    {
        var file = Changed(f =>
        {
            f["people"]![0]!["shifts"] = JsonNode.Parse("[[200, 300], [100, 220], [400, 390]]");
            f["stores"]![0]!["places"] = -2;
            f["machines"]![0]!["kind"] = "kettle";
            f["machines"]![0]!.AsObject().Remove("turn");
            f["steps"]![0]!["minutes"] = 22;
            f["steps"]![1]!["minutes"] = "half an hour";
            f["steps"]![1]!["tools"] = JsonNode.Parse("[\"whisk\"]");
            f["steps"]![1]!["if"] = JsonNode.Parse("[\"where\", \"moon\"]");
            f["steps"]!.AsArray().Add(f["steps"]![0]!.DeepClone());
            f["holds"]![0]!["from"] = "nowhere";
            f["holds"]!.AsArray().Add(JsonNode.Parse("{\"id\":\"back\",\"from\":\"box\",\"to\":\"box\",\"in\":[[\"rack\",0,60]]}"));
            f["clocks"] = JsonNode.Parse("[{\"id\":\"custard\",\"steps\":[\"mix\"],\"holds\":[\"gone\"],\"limit\":60}]");
            f["orders"]![0]!["to"] = 100;
            f["orders"]![0]!.AsObject().Remove("edge");
            f["fixed"] = JsonNode.Parse("[{\"step\":\"mix\",\"people\":[\"zoe\"],\"why\":\"done\"}]");
        });

        var (week, problems) = WeekFile.Read(file);

        Assert.Null(week);
        Assert.Equal(
            [
                "clocks custard.holds", "fixed[0].people", "holds", "holds rest.from", "machines bowl.kind", "machines bowl.turn", "orders o.edge", "orders o.from",
                "people ann.shifts[1]", "people ann.shifts[2]", "steps box.if", "steps box.minutes", "steps box.tools", "steps mix.id", "steps mix.minutes", "steps mix.minutes", "stores rack.places",
            ],
            problems.Select(p => p.Where).Order(StringComparer.Ordinal));
        var message = string.Join('\n', problems);
        string[] told = ["half an hour", "kettle", "whisk", "where = moon", "nowhere", "gone", "zoe", "-2", "22", "[400, 390]", "200 to 100", "in a ring", "2 times"];
        Assert.All(told, t => Assert.Contains(t, message, StringComparison.Ordinal));
        Assert.All(problems, p => Assert.True(p.Sentence.Length > 0 && p.Try.Length > 0));
    }

    [Theory]
    [InlineData("", "not JSON")]
    [InlineData("{", "not JSON")]
    [InlineData("[]", "missing")]
    [InlineData("null", "missing")]
    [InlineData("{\"format\":\"bakery-week/2\"}", "bakery-week/1")]
    [InlineData("{\"name\":\"\\ud800\"}", "half a sign")]
    [InlineData("{\"horizon\":2000000000}", "beyond")]
    [InlineData("{\"horizon\":1.5}", "whole number")]
    [InlineData("{\"steps\":{}}", "must be a list")]
    [InlineData("{\"steps\":[null]}", "missing")]
    [InlineData("{\"steps\":[{\"id\":\"\"}]}", "empty")]
    [InlineData("{\"steps\":[{\"id\":\"a\",\"mix\":3}]}", "must be an object")]
    [InlineData("{\"stores\":[{\"id\":\"a\",\"cold\":\"yes\"}]}", "true or false")]
    [InlineData("{\"people\":[{\"id\":\"a\",\"shifts\":[[1]]}]}", "list of 2 numbers")]
    [InlineData("{\"tick\":0}", "at least 1")]
    public void Nothing_that_can_be_written_stops_the_reader(string text, string told)
    {
        var (week, problems) = WeekFile.Read(text);

        Assert.Null(week);
        Assert.Contains(problems, p => p.ToString().Contains(told, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no", "not JSON")]
    [InlineData("{\"format\":\"bakery-week/1\",\"week\":\"w\"}", "bakery-plan/1")]
    [InlineData("{\"format\":\"bakery-plan/1\",\"steps\":[{\"step\":\"a\",\"start\":\"noon\"}]}", "whole number")]
    [InlineData("{\"format\":\"bakery-plan/1\",\"choices\":{\"where\":1}}", "must be a text")]
    public void A_broken_plan_file_is_told(string text, string told)
    {
        var (plan, problems) = PlanFile.Read(text);

        Assert.Null(plan);
        Assert.Contains(problems, p => p.ToString().Contains(told, StringComparison.Ordinal));
    }

    /// <summary>A hold whose end may be absent is absent with it; here driving exists only on site and its hold always.</summary>
    [Fact]
    public void A_hold_goes_with_its_ends()
    {
        var (_, problems) = WeekFile.Read(Changed(f =>
        {
            f["choices"] = JsonNode.Parse("[{\"id\":\"where\",\"options\":[\"shop\",\"site\"]}]");
            f["steps"]![0]!["if"] = JsonNode.Parse("[\"where\",\"site\"]");
        }));

        Assert.Equal(["holds rest.if"], problems.Select(p => p.Where));
    }

    private static string Changed(Action<JsonObject> change)
    {
        var file = JsonNode.Parse(Small)!.AsObject();
        change(file);
        return file.ToJsonString();
    }

    /// <summary>Mix, rest on the rack, box; one person, one bowl, one order.</summary>
    private const string Small = """
        {
          "format": "bakery-week/1", "name": "small", "epoch": "2026-06-01T00:00:00Z", "zone": "Europe/London", "tick": 5, "horizon": 1000, "now": 0,
          "people": [{ "id": "ann", "name": "Ann", "skills": ["hand"], "shifts": [[0, 500]] }],
          "tools": [], "machines": [{ "id": "bowl", "kind": "bowl", "turn": [5, 10] }], "families": [{ "id": "sponge", "limit": { "bowl": 900 } }],
          "stores": [{ "id": "rack", "kind": "rack", "cold": false, "clear": 40, "places": 4 }],
          "steps": [
            { "id": "mix", "order": "o", "tier": "", "name": "mix", "minutes": 20, "skill": "hand", "mix": { "family": "sponge", "size": 500 } },
            { "id": "box", "order": "o", "name": "box", "minutes": 10, "skill": "hand" }
          ],
          "holds": [{ "id": "rest", "from": "mix", "to": "box", "in": [["rack", 0, 200]] }],
          "clocks": [], "ages": [],
          "orders": [{ "id": "o", "name": "Order", "ready": "box", "out": "box", "edge": "start", "from": 200, "to": 300, "fresh": [] }]
        }
        """;
}
