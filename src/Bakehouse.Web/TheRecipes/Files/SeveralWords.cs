namespace Bakehouse.Web.TheRecipes.Files;

using System.Text;

/// <summary>Several words in one field, parted by semicolons; a backslash before a sign of ours makes it an ordinary one.</summary>
internal static class SeveralWords
{
    /// <summary>Words joined by "; ".</summary>
    public static string Join(IEnumerable<string> words) => string.Join("; ", words);

    /// <summary>A word that may hold our signs.</summary>
    public static string Plain(string word)
    {
        var text = new StringBuilder();
        foreach (var sign in word)
        {
            text.Append(sign is ';' or '=' or '[' or ']' or '\\' ? "\\" : "").Append(sign);
        }

        return text.ToString();
    }

    /// <summary>The words between that sign, trimmed; empty ones are left out. Backslashes stay until <see cref="Said"/>.</summary>
    public static IReadOnlyList<string> Split(string field, char sign)
    {
        List<string> words = [];
        var begin = 0;
        for (var i = 0; i <= field.Length; i++)
        {
            if (i == field.Length || field[i] == sign)
            {
                words.Add(field[begin..i].Trim());
                begin = i + 1;
            }
            else if (field[i] == '\\')
            {
                i++;
                if (i >= field.Length)
                {
                    words.Add(field[begin..].Trim());
                }
            }
        }

        return [.. words.Where(w => w.Length > 0)];
    }

    /// <summary>The word as it is meant, without backslashes.</summary>
    public static string Said(string word)
    {
        var text = new StringBuilder();
        for (var i = 0; i < word.Length; i++)
        {
            i += word[i] == '\\' && i + 1 < word.Length ? 1 : 0;
            text.Append(word[i]);
        }

        return text.ToString().Trim();
    }
}
