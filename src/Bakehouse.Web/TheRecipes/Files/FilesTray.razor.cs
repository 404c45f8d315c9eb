namespace Bakehouse.Web.TheRecipes.Files;

using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

/// <summary>Reads files of recipes and ingredients, shows what they would do, and writes all of it or nothing.</summary>
public sealed partial class FilesTray
{
    private const int MostShown = 60;

    private readonly Dictionary<bool, string> texts = [];
    private IReadOnlyList<Problem> problems = [];
    private IReadOnlyList<Order> touches = [];
    private string why = "";
    private string said = "";
    private bool busy;

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private FilesRead? Read { get; set; }

    private async Task Take(InputFileChangeEventArgs chosen, bool isRecipes)
    {
        (said, Read, problems) = ("", null, []);
        texts.Remove(isRecipes);
        var where = isRecipes ? "Recipes" : "Ingredients";
        if (chosen.File.Size > FilesRead.LargestFile)
        {
            problems = [new Problem(where, Problem.Shown(chosen.File.Name), FormattableString.Invariant($"The file has {chosen.File.Size / 1_000_000m:0.#} MB; at most {FilesRead.LargestFile / 1_000_000} are read."), "Part it in several files.")];
            return;
        }

        await using var stream = chosen.File.OpenReadStream(FilesRead.LargestFile);
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes);
        if (FilesRead.Text(bytes.ToArray()) is not { } text)
        {
            problems = [new Problem(where, Problem.Shown(chosen.File.Name), "The file is not written in UTF-8.", "Save it as CSV UTF-8.")];
            return;
        }

        texts[isRecipes] = text;
        await Look();
    }

    /// <summary>What would be written, what is wrong with it by row, and which planned cakes it touches.</summary>
    private async Task Look()
    {
        var book = Book.State.Cookbook;
        Read = FilesRead.Of(texts.GetValueOrDefault(false), texts.GetValueOrDefault(true), book);
        (problems, touches) = (Read.Problems, []);
        if (problems.Count == 0 && Read.New + Read.Changed > 0)
        {
            Hear((await Book.Foresee(Command("From a file"))).Answer);
            touches = problems.Count == 0 ? Touched.By(book.With(Read.Ingredients, Read.Recipes), Book.State) : [];
        }

        problems = problems.Count <= MostShown ? problems : [.. problems.Take(MostShown), new Problem("And more", FormattableString.Invariant($"{problems.Count - MostShown}"), "There are more like these.", "Mend these first.")];
    }

    private async Task Write()
    {
        busy = true;
        var answer = await Book.Enter(Command(why));
        busy = false;
        Hear(answer);
        if (answer.Kind == AnswerKind.Accepted)
        {
            (Read, said, why) = (null, answer.Message.Length > 0 ? answer.Message : "All of it is written.", "");
            texts.Clear();
        }
    }

    private WriteRecipes Command(string reason) => new(Guid.NewGuid(), Here.Person, Here.Device, Read!.Ingredients, Read.Recipes, reason);

    private void Hear(Answer answer) => problems = answer.Kind == AnswerKind.Accepted ? []
        : answer.Problems.Count > 0 ? [.. answer.Problems.Select(Read!.ByRow)]
        : [new Problem("Files", "", answer.Message, "Read them in again.")];
}
