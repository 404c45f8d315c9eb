namespace Bakehouse.Web.Tests.Architecture;

using System.Reflection;
using System.Xml.Linq;

/// <summary>The house rules that a compiler can't see: who may lean on whom, and what a name may be.</summary>
public sealed class HouseTests
{
    internal static readonly string Root = FindRoot();

    /// <summary>Project references, and no others. A project exists only to forbid a reference.</summary>
    private static readonly Dictionary<string, string[]> MayReference = new()
    {
        ["Bakehouse.Domain"] = [],
        ["Bakehouse.Planner"] = ["Bakehouse.Domain"],
        ["Bakehouse.Book"] = ["Bakehouse.Domain"],
        ["Bakehouse.Migrations.Sqlite"] = ["Bakehouse.Book"],
        ["Bakehouse.Assets"] = [],
        ["Bakehouse.Web"] = ["Bakehouse.Domain", "Bakehouse.Planner", "Bakehouse.Book", "Bakehouse.Migrations.Sqlite", "Bakehouse.Assets"],
    };

    public static TheoryData<string> Projects => [.. MayReference.Keys];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_leans_only_on_those_below_it(string project)
    {
        var references = Items(project, "ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Replace('\\', '/')));
        Assert.Empty(references.Except(MayReference[project]));
    }

    [Fact]
    public void Every_project_of_the_product_is_named_here()
    {
        var found = new[] { "src", "migrations", "wwwroot-assets" }
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Root, folder), "*.csproj", SearchOption.AllDirectories))
            .Select(Path.GetFileNameWithoutExtension);
        Assert.Equal(MayReference.Keys.Order(), found.Order());
    }

    [Fact]
    public void Domain_knows_NodaTime_and_nothing_else()
    {
        Assert.Equal(["NodaTime"], Items("Bakehouse.Domain", "PackageReference"));
        var loaded = typeof(Domain.Planning.Week).Assembly.GetReferencedAssemblies()
            .Select(a => a.Name!)
            .Where(a => !a.StartsWith("System", StringComparison.Ordinal));
        Assert.Equal(["NodaTime"], loaded);
    }

    [Fact]
    public void The_planner_does_not_know_orders_or_shops()
    {
        var used = typeof(Planner.Quick.QuickPlanner).Assembly.GetTypes()
            .SelectMany(TypesNamedBy)
            .Where(t => t.Namespace is "Bakehouse.Domain.Orders" or "Bakehouse.Domain.Shops" or "Bakehouse.Domain.Cakes")
            .Select(t => t.FullName)
            .Distinct();
        Assert.Empty(used);
    }

    [Fact]
    public void The_Judge_and_the_planners_share_no_code()
    {
        var judge = Directory.EnumerateFiles(Path.Combine(Root, "src/Bakehouse.Domain/Planning"), "Judge*.cs").ToList();
        Assert.NotEmpty(judge);
        Assert.DoesNotContain(judge, file => File.ReadAllText(file).Contains("Bakehouse.Planner", StringComparison.Ordinal));
        var inside = typeof(Planner.Quick.QuickPlanner).Assembly.GetTypes().SelectMany(TypesNamedBy)
            .Where(t => t.Namespace == "Bakehouse.Domain.Planning" && t.Name.StartsWith("Judge", StringComparison.Ordinal) && t.Name != "Judge");
        Assert.Empty(inside);
    }

    [Fact]
    public void The_audit_shares_no_code_with_what_writes_the_book()
    {
        var audit = Directory.EnumerateFiles(Path.Combine(Root, "src/Bakehouse.Book/Keeping/Auditing"), "*.cs").Select(File.ReadAllText).ToList();
        Assert.NotEmpty(audit);
        Assert.All(
            ["Bakehouse.Book.Tables", "Bakehouse.Book.Entries", "Bakehouse.Book.Reading", "Bakehouse.Domain", "BookContext"],
            other => Assert.DoesNotContain(audit, text => text.Contains(other, StringComparison.Ordinal)));
    }

    [Fact]
    public void No_type_bears_the_name_of_a_namespace_on_its_way()
    {
        Assembly[] all = [typeof(Domain.Planning.Week).Assembly, typeof(Planner.Quick.QuickPlanner).Assembly, typeof(Book.Reading.IBook).Assembly, typeof(Program).Assembly];
        var rooms = all.SelectMany(a => a.GetTypes())
            .Select(t => t.Namespace)
            .Where(n => n is not null && n.StartsWith("Bakehouse.", StringComparison.Ordinal))
            .SelectMany(n => n!.Split('.'))
            .ToHashSet();
        var clashes = all.SelectMany(a => a.GetTypes())
            .Where(t => t.IsPublic && t.Namespace?.StartsWith("Bakehouse.", StringComparison.Ordinal) == true && rooms.Contains(t.Name))
            .Select(t => t.FullName);
        Assert.Empty(clashes);
    }

    [Fact]
    public void No_name_is_a_heap()
    {
        string[] heaps = ["Core", "Common", "Utils", "Util", "Manager", "Helper", "Helpers", "Service"];
        Assembly[] all = [typeof(Domain.Planning.Week).Assembly, typeof(Planner.Quick.QuickPlanner).Assembly, typeof(Book.Reading.IBook).Assembly, typeof(Program).Assembly];
        var named = all.SelectMany(a => a.GetTypes())
            .Where(t => t.Namespace?.StartsWith("Bakehouse.", StringComparison.Ordinal) == true && !t.Name.Contains('<', StringComparison.Ordinal))
            .Where(t => heaps.Any(h => t.Name.EndsWith(h, StringComparison.Ordinal)))
            .Select(t => t.FullName);
        Assert.Empty(named);
    }

    [Fact]
    public void Every_version_is_pinned_once_and_exactly()
    {
        var central = XDocument.Load(Path.Combine(Root, "Directory.Packages.props")).Descendants("PackageVersion").ToList();
        Assert.All(central, v => Assert.Matches(@"^\d+\.\d+\.\d+(\.\d+)?(-[a-z0-9.]+)?$", v.Attribute("Version")!.Value));
        Assert.Equal(central.Count, central.Select(v => v.Attribute("Include")!.Value).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    private static IEnumerable<Type> TypesNamedBy(Type type)
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        return type.GetFields(All).Select(f => f.FieldType)
            .Concat(type.GetMethods(All).SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType)))
            .Concat(type.GetConstructors(All).SelectMany(c => c.GetParameters().Select(p => p.ParameterType)))
            .SelectMany(t => t.IsGenericType ? t.GetGenericArguments().Append(t) : [t]);
    }

    private static IEnumerable<string> Items(string project, string name)
    {
        var file = Directory.EnumerateFiles(Root, project + ".csproj", SearchOption.AllDirectories).Single();
        return XDocument.Load(file).Descendants(name).Select(e => e.Attribute("Include")!.Value);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Bakehouse.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException($"No Bakehouse.sln above {AppContext.BaseDirectory}.");
    }
}
