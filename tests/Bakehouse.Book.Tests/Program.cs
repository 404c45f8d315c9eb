using Bakehouse.Book.Tests;
using Bakehouse.Book.Tests.Keeping;

// The test program is also the writer that the tests kill: "write-until-killed BOOK WITNESS SEED".
if (args is [Writer.Verb, var book, var witness, var seed])
{
    return await Writer.Run(book, witness, int.Parse(seed, System.Globalization.CultureInfo.InvariantCulture));
}

return args.Any(a => a is "--server" or "--internal-msbuild-node")
    ? await Xunit.MicrosoftTestingPlatform.TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions)
    : await Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args);
