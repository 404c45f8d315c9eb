using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// Makes a plan better in a process of its own, of low priority. Whatever becomes of that process, the best plan that it told stands, and if
/// it told none, the plan given.
/// </summary>
/// <param name="file">The program that has the verb.</param>
/// <param name="arguments">Its arguments.</param>
public sealed class SolverProcess(string file, params IReadOnlyList<string> arguments)
{
    private const uint Seed = 1;

    /// <summary>Number of the process that solves, 0 before it starts.</summary>
    internal int Pid { get; private set; }

    /// <summary>The program that runs now, asked to solve.</summary>
    public static SolverProcess OfThisProgram()
    {
        var program = Environment.ProcessPath ?? throw new InvalidOperationException("The program does not know its own path.");
        return Path.GetFileNameWithoutExtension(program) == "dotnet"
            ? new SolverProcess(program, Environment.GetCommandLineArgs()[0], SolverVerb.Name)
            : new SolverProcess(program, SolverVerb.Name);
    }

    /// <summary>Searches for so many units of the solver, some seconds of each of two processors, or until the time is over.</summary>
    /// <param name="week">The week.</param>
    /// <param name="start">A plan that breaks no rule but by facts.</param>
    /// <param name="units">Units of the solver; they decide what is found, the time only cuts it short. Above 0.</param>
    /// <param name="longest">Elapsed time after which the process is ended.</param>
    /// <param name="better">Hears of each better plan, judged, on any thread.</param>
    /// <param name="cancel">Ends the search; what was found stands.</param>
    public async Task<Improved> Improve(Week week, Plan start, double units, TimeSpan longest, Action<Plan>? better = null, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(units);
        var best = new Bettering(week, start, better ?? (_ => { }));
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        over.CancelAfter(longest);
        try
        {
            using var process = Start();
            try
            {
                await Ask(process, new SolverAsked(WeekFile.Write(week), PlanFile.Write(start), Seed, units), over.Token);
                while (await process.StandardOutput.ReadLineAsync(over.Token) is { } line)
                {
                    best.Hear(JsonSerializer.Deserialize<SolverTold>(line)!);
                }

                await process.WaitForExitAsync(over.Token);
                return best.Now(process.ExitCode == 0 ? null : $"The solver ended with {process.ExitCode}.");
            }
            finally
            {
                End(process);
            }
        }
        catch (OperationCanceledException)
        {
            return best.Now(null);
        }
        catch (Exception trouble) when (trouble is Win32Exception or IOException or JsonException)
        {
            return best.Now(trouble.Message);
        }
    }

    private Process Start()
    {
        var process = Process.Start(new ProcessStartInfo(file, arguments) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw new InvalidOperationException($"{file} did not start.");
        process.BeginErrorReadLine();
        Pid = process.Id;
        return process;
    }

    private static async Task Ask(Process process, SolverAsked asked, CancellationToken cancel)
    {
        Calm(process);
        // It stays open: the process ends when it is closed, also if this program is killed.
        await process.StandardInput.WriteLineAsync(JsonSerializer.Serialize(asked).AsMemory(), cancel);
        await process.StandardInput.FlushAsync(cancel);
    }

    /// <summary>Pages and bells come first.</summary>
    private static void Calm(Process process)
    {
        try
        {
            process.PriorityClass = ProcessPriorityClass.BelowNormal;
        }
        catch (Exception ended) when (ended is InvalidOperationException or Win32Exception)
        {
            // It is over already, which the reading finds out; or the system keeps priorities to itself.
        }
    }

    private static void End(Process process)
    {
        if (!process.HasExited)
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
        }
    }
}
