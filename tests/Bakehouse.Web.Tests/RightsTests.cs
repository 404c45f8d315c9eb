namespace Bakehouse.Web.Tests;

using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;

/// <summary>Every page and every role: what is not in the table is for nobody.</summary>
public sealed class RightsTests
{
    public static TheoryData<string, Role, bool> Table()
    {
        var data = new TheoryData<string, Role, bool>();
        var allowed = new Dictionary<string, Role[]>(StringComparer.Ordinal)
        {
            ["order"] = [Role.Owner, Role.Baker, Role.Counter],
            ["cakes"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter, Role.Driver],
            ["week"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter],
            ["kitchen"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter],
            ["calendar"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter, Role.Driver],
            ["recipes"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter],
            ["shop"] = [Role.Owner],
            ["well"] = [Role.Owner],
            ["nowhere"] = [],
        };
        foreach (var (row, roles) in allowed)
        {
            foreach (var role in Enum.GetValues<Role>())
            {
                data.Add(row, role, roles.Contains(role));
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Table))]
    public void A_role_opens_its_own_pages(string row, Role role, bool may) => Assert.Equal(may, Rights.MayOpen(row, role));

    [Fact]
    public void Every_page_has_a_row()
    {
        var pages = typeof(Rights).Assembly.GetTypes().Where(t => t.IsDefined(typeof(RouteAttribute), inherit: false)).ToList();
        Assert.NotEmpty(pages);
        Assert.All(pages, p => Assert.True(Rights.MayOpen(Rights.RowOf(p), Role.Owner), p.Name));
    }

    [Fact]
    public void Nobody_opens_only_the_door() =>
        Assert.All(Rights.Labels, l => Assert.False(Rights.MayOpen(l.Path, role: null)));
}
