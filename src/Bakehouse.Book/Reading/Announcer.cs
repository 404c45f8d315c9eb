namespace Bakehouse.Book.Reading;

using System.Threading.Channels;
using Microsoft.Extensions.Logging;

/// <summary>Tells the screens what stands now, one state after another, off the thread that wrote it.</summary>
internal sealed class Announcer : IDisposable
{
    private readonly Channel<BookState> states = Channel.CreateUnbounded<BookState>(new UnboundedChannelOptions { SingleReader = true });

    public Announcer(Action<BookState> listeners, ILogger log) => _ = Task.Run(() => Run(listeners, log));

    public void Tell(BookState state) => states.Writer.TryWrite(state);

    public void Dispose() => states.Writer.Complete();

    private async Task Run(Action<BookState> listeners, ILogger log)
    {
        await foreach (var state in states.Reader.ReadAllAsync())
        {
            try
            {
                listeners(state);
            }
#pragma warning disable CA1031 // One broken screen must not stop the others from hearing.
            catch (Exception trouble)
#pragma warning restore CA1031
            {
                log.LogError(trouble, "A listener failed on state {Head}", state.Head);
            }
        }
    }
}
