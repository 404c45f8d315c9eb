namespace Bakehouse.Web.TakeOrder;

/// <summary>Somebody else changed the order meanwhile: one of the two versions goes on.</summary>
public sealed partial class OrderPage
{
    private async Task KeepTheirs()
    {
        Form = OrderForm.Of(Clash!, Shop);
        (Clash, Mine) = (null, null);
        Draw();
        command = Guid.NewGuid();
        await WriteDraft(null);
    }

    private async Task UseMine()
    {
        var order = Mine! with { Version = Clash!.Version };
        Form.Version = order.Version;
        (Clash, Mine) = (null, null);
        command = Guid.NewGuid();
        await Enter(order);
    }
}
