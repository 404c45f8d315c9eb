namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>
/// Recipes and ingredients are written in two taps: the first shows which planned cakes they touch, the second writes, if they are still the
/// same. Where none is touched the first writes at once.
/// </summary>
internal sealed class SeenFirst(IBook book)
{
    /// <summary>Planned cakes that would wait for a look, as shown; empty before the first tap and after the last.</summary>
    public IReadOnlyList<Order> Touches { get; private set; } = [];

    /// <summary>What the book refused.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>Shows or writes. The book's answer once it is written, else null.</summary>
    /// <param name="name">What is written, for a refusal that names no problem.</param>
    public async Task<Answer?> Enter(WriteRecipes command, string name)
    {
        if (!Took((await book.Foresee(command)).Answer, name))
        {
            return null;
        }

        var next = Touched.By(book.State.Cookbook.With(command.Ingredients, command.Recipes), book.State);
        if (next.Select(o => o.Id).Except(Touches.Select(o => o.Id)).Any())
        {
            Touches = next;
            return null;
        }

        var answer = await book.Enter(command);
        if (!Took(answer, name))
        {
            return null;
        }

        Touches = [];
        return answer;
    }

    /// <summary>Something else is written about now.</summary>
    public void Forget() => (Touches, Problems) = ([], []);

    private bool Took(Answer answer, string name)
    {
        Problems = answer.Kind == AnswerKind.Accepted ? [] : answer.Problems.Count > 0 ? answer.Problems : [new Problem(name, "", answer.Message, "Open it again.")];
        return Problems.Count == 0;
    }
}
