namespace Bakehouse.Web.IsAllWell;

using Bakehouse.Web.Shell;

/// <summary>One thing that the owner wants to know to be well.</summary>
/// <param name="About">What it is about, in one or two words.</param>
/// <param name="Mark">In time: well. Tight: look after it today. Late: do something now.</param>
/// <param name="Says">How it stands, in a sentence.</param>
/// <param name="Do">What to do; null if nothing.</param>
public sealed record WellLine(string About, MarkKind Mark, string Says, string? Do = null);
