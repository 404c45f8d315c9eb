namespace Bakehouse.Browser.Tests;

using Deque.AxeCore.Commons;
using Microsoft.Playwright;

/// <summary>
/// All rules of axe on the page as it stands. Its script is put into the page by hand: the package's own way opens two more pages for
/// each look and takes ten times as long.
/// </summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>What axe holds against the page.</summary>
    public static async Task<AxeViolation[]> Violations(IPage page)
    {
        await page.EvaluateAsync(Script);
        return await page.EvaluateAsync<AxeViolation[]>(
            "async () => (await axe.run(document, { resultTypes: ['violations'] })).violations.map(v => ({ id: v.id, impact: v.impact, help: v.help, nodes: v.nodes.map(n => ({ html: n.html })) }))");
    }
}

/// <summary>One rule that the page breaks.</summary>
internal sealed class AxeViolation
{
    public string Id { get; set; } = "";

    public string? Impact { get; set; }

    public string Help { get; set; } = "";

    public AxeNode[] Nodes { get; set; } = [];
}

/// <summary>Where it is broken.</summary>
internal sealed class AxeNode
{
    public string Html { get; set; } = "";
}
