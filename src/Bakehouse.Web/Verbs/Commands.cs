using System.CommandLine;

namespace Bakehouse.Web.Verbs;

/// <summary>What can be done from the command line without starting the pages.</summary>
public static class Commands
{
    /// <summary>All verbs.</summary>
    public static RootCommand Build() => new("Plan a bakery week, check a plan, work out a build sheet, or look after a book, without starting the pages.")
    {
        PlanVerb.Build(),
        CheckVerb.Build(),
        SheetVerb.Build(),
        AuditVerb.Build(),
        BackupVerb.Build(),
        RestoreVerb.Build(),
        SolveVerb.Build(),
    };

    /// <summary>True if the arguments name a verb; if not, the pages are to be started.</summary>
    public static bool Named(string[] args)
        => args.Length > 0 && Build().Subcommands.Any(c => string.Equals(c.Name, args[0], StringComparison.Ordinal));

    /// <summary>Runs the verb that the arguments name. Returns its exit code: 2 if the arguments or a file can't be read.</summary>
    public static int Run(string[] args)
    {
        var parsed = Build().Parse(args);
        var code = parsed.Invoke();
        return parsed.Errors.Count > 0 ? Files.Unreadable : code;
    }
}
