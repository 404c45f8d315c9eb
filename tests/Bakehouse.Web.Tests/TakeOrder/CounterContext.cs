namespace Bakehouse.Web.Tests.TakeOrder;

using AngleSharp.Dom;
using Bakehouse.Book.Reading;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.TakeOrder;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using NodaTime;
using NodaTime.Testing;

/// <summary>The order page on a book in memory, on Tuesday 13 October 2026 at 11:30 in London, and the hands at it.</summary>
public abstract class CounterContext : BunitContext
{
    protected CounterContext()
    {
        Services.AddSingleton<IBook>(Book);
        Services.AddSingleton<IClock>(new FakeClock(Cakes.Now));
        Services.AddSingleton<TimeProvider>(Time);
    }

    protected BookInHand Book { get; } = new();

    protected FakeTimeProvider Time { get; } = new(Cakes.Now.ToDateTimeOffset());

    protected IRenderedComponent<OrderPage> Open(Guid? id = null, string person = "wren") =>
        Render<OrderPage>(p => p.AddCascadingValue(new Who(person, $"{person}'s screen")).Add(o => o.Id, id));

    protected IRenderedComponent<OrderPage> Filled(string day, string hour, string person = "wren")
    {
        var page = Open(person: person);
        Type(page, "day", day);
        Type(page, "hour", hour);
        Type(page, "count", "20");
        Tap(page, "one 8");
        Tap(page, "None told");
        Type(page, "name", "Amara Okafor");
        return page;
    }

    protected static void Type(IRenderedComponent<OrderPage> page, string field, string text) => page.Find($"#{field}").Input(text);

    protected static void Tap(IRenderedComponent<OrderPage> page, string name) =>
        page.FindAll("button").First(b => (b.GetAttribute("aria-label") ?? b.QuerySelector("b")?.TextContent ?? b.TextContent.Trim()) == name).Click();
}
