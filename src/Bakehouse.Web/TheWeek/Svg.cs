namespace Bakehouse.Web.TheWeek;

using System.Globalization;
using System.Net;
using System.Text;

/// <summary>Writes markup of a drawing. Every text and title is encoded here; numbers have one decimal and a point.</summary>
internal sealed class Svg
{
    private readonly StringBuilder markup = new();

    public static string F(double n) => n.ToString("0.#", CultureInfo.InvariantCulture);

    public Svg Rect(string look, double x, double y, double wide, double high, double round = 0)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<rect class=\"{look}\" x=\"{F(x)}\" y=\"{F(y)}\" width=\"{F(Math.Max(0, wide))}\" height=\"{F(high)}\"");
        if (round > 0)
        {
            markup.Append(CultureInfo.InvariantCulture, $" rx=\"{F(round)}\"");
        }

        markup.Append("/>");
        return this;
    }

    public Svg Path(string look, string d)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<path class=\"{look}\" d=\"{d}\"/>");
        return this;
    }

    /// <summary>Text; its class gives size and anchor. A space follows, so that texts side by side are read as words of their own.</summary>
    public Svg Text(string look, double x, double y, string text)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<text class=\"{look}\" x=\"{F(x)}\" y=\"{F(y)}\">{WebUtility.HtmlEncode(text)}</text> ");
        return this;
    }

    /// <summary>Text squeezed to that width if it would be wider.</summary>
    public Svg Fitted(string look, double x, double y, string text, double most, double letter)
    {
        if (text.Length * letter * 0.8 > most)
        {
            text = text[..Math.Max(1, (int)(most / (letter * 0.8)) - 1)] + "…";
        }

        var squeeze = text.Length * letter > most ? " narrow" : "";
        return Text(look + squeeze, x, y, text);
    }

    public Svg Open(string look)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<g class=\"{look}\">");
        return this;
    }

    public Svg Close()
    {
        markup.Append("</g>");
        return this;
    }

    public Svg Raw(string piece)
    {
        markup.Append(piece);
        return this;
    }

    public override string ToString() => markup.ToString();
}
