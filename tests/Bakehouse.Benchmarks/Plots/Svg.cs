using System.Globalization;
using System.Text;

namespace Bakehouse.Benchmarks.Plots;

/// <summary>A drawing in the making: black on white, so that it reads on any page.</summary>
internal sealed class Svg(int width, int height)
{
    private readonly StringBuilder body = new();

    public void Line(double x1, double y1, double x2, double y2, string colour = "#d8d4cc", double wide = 1) =>
        Add($"<line x1=\"{x1:0.#}\" y1=\"{y1:0.#}\" x2=\"{x2:0.#}\" y2=\"{y2:0.#}\" stroke=\"{colour}\" stroke-width=\"{wide:0.#}\"/>");

    public void Path(IEnumerable<(double X, double Y)> points, string colour, bool dashed = false) =>
        Add($"<polyline points=\"{string.Join(' ', points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.#},{p.Y:0.#}")))}\" fill=\"none\" stroke=\"{colour}\" stroke-width=\"2\"{(dashed ? " stroke-dasharray=\"5 4\"" : "")}/>");

    public void Dot(double x, double y, string colour) => Add($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"3.5\" fill=\"{colour}\"/>");

    public void Box(double x, double y, double wide, double high, string colour) =>
        Add($"<rect x=\"{x:0.#}\" y=\"{y:0.#}\" width=\"{wide:0.#}\" height=\"{high:0.#}\" fill=\"{colour}\"/>");

    /// <param name="x">Where it stands.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">Plain text.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="colour">Of the letters.</param>
    /// <param name="size">Of the letters, in pixels.</param>
    public void Text(double x, double y, string text, string anchor = "start", string colour = "#2a2622", int size = 12) =>
        Add($"<text x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\" fill=\"{colour}\" font-size=\"{size}\">{System.Security.SecurityElement.Escape(text)}</text>");

    public void Save(string path, string title) => File.WriteAllText(path, string.Create(
        CultureInfo.InvariantCulture,
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" role=\"img\" font-family=\"sans-serif\">\n<title>{System.Security.SecurityElement.Escape(title)}</title>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>\n{body}</svg>\n"));

    private void Add(FormattableString element) => body.Append(element.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
