namespace Bakehouse.Web.Shell;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;

/// <summary>A book with nothing in it that takes no entry: what the pages show before a book on disk is opened.</summary>
internal sealed class BlankBook : IBook
{
    public event Action<BookState>? Changed
    {
        add { }
        remove { }
    }

    public BookState State { get; } = new(0, null, [], [], null, null, []);

    public Task<Answer> Enter(Command command, CancellationToken cancel = default) => Task.FromResult(
        new Answer(AnswerKind.Refused, "No book is open, so nothing was written.", [], null, new Dictionary<string, int>()));

    public Task<IReadOnlyList<OrderVersion>> History(Guid order, CancellationToken cancel = default) =>
        Task.FromResult<IReadOnlyList<OrderVersion>>([]);

    public Task<string?> Draft(string device, CancellationToken cancel = default) => Task.FromResult<string?>(null);
}
