namespace Bakehouse.Domain.Tests.Orders;

using System.Reflection;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>What gets into a log or a fault by being printed holds nothing that a customer said.</summary>
public sealed class KeptOutTests
{
    private const string Odd = "Zorvath";

    private static readonly Order Told = Cakes.Good() with
    {
        Customer = new Customer(Odd, Odd),
        Handover = new Handover(Way.Deliver, new LocalDateTime(2026, 10, 24, 14, 0), Odd, 20),
        Allergies = new AllergyAnswer(AllergyKind.Avoid, [Odd], Odd),
        Inscription = Odd,
        Notes = Odd,
        OnTop = new OnTop(new FreshFlowers([new OrderedFlower(Odd, FlowerPut.Pick)], Odd), []),
        Eaters = new Eaters(true, true) { Asked = Odd },
    };

    [Fact]
    public void An_order_and_each_part_of_it_print_without_its_words()
    {
        object?[] all = [Told, .. typeof(Order).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.PropertyType != typeof(string)).Select(p => p.GetValue(Told))];
        Assert.All(all, part => Assert.DoesNotContain(Odd, $"{part}", StringComparison.Ordinal));
        Assert.Contains(Told.Id.ToString("N"), $"{Told}", StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_of_a_week_prints_its_id() =>
        Assert.DoesNotContain(Odd, $"{Assert.Single(Week.From([Told], SampleBakery.Shop, [], null, Cakes.Now).Orders)}", StringComparison.Ordinal);
}
