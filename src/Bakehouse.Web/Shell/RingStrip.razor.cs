namespace Bakehouse.Web.Shell;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Bell;
using Bakehouse.Web.TheKitchen;
using Microsoft.AspNetCore.Components;

/// <summary>Shows the first ring on every interactive page and answers it there.</summary>
public partial class RingStrip
{
    private WhatRings state = default!;
    private string said = "";

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private KitchenView? View => state.Book.Shop is { } shop && Rights.MayOpen("kitchen", shop.PersonOf(Here.Person)?.Role)
        ? new KitchenReader(state, shop).Read()
        : null;

    private Role? MyRole => state.Book.Shop?.PersonOf(Here.Person)?.Role;

    private bool IsOwner => MyRole == Role.Owner;

    private IReadOnlyList<Notice> Told => state.Book.Shop is { } shop && MyRole is { } role ? Notices.Of(state, shop, role) : [];

    /// <summary>How often the owner was called for the first ring; 0 on the pages of the others.</summary>
    private int CalledFor => IsOwner && First is { } first ? state.CallsFor(state.Ringing.First(r => r.Id == first.Id)) : 0;

    private EventCallback Trust => IsOwner ? EventCallback.Factory.Create(this, TrustClock) : default;

    private RingView? First => View?.Rings is [var first, ..] ? first : null;

    private string More => View?.Rings.Count is > 1 and var count ? $", {count - 1 + View.MoreRings} more" : "";

    /// <inheritdoc/>
    public void Dispose()
    {
        Ringer.Changed -= Draw;
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        state = Ringer.State;
        Ringer.Changed += Draw;
    }

    private void Draw(WhatRings now) => _ = InvokeAsync(() =>
    {
        state = now;
        said = "";
        StateHasChanged();
    });

    private async Task TrustClock()
    {
        var answer = await Book.Enter(new TrustClock(Guid.NewGuid(), Here.Person, Here.Device));
        said = answer.Message;
        Ringer.TrustClock();
    }

    private async Task Answer(RingAnswerKind kind, string reason = "")
    {
        if (First is { } ring && (kind != RingAnswerKind.Cannot || reason.Length > 0))
        {
            var answer = await Book.Answer(Here, Guid.NewGuid(), ring.Id, kind, reason, CancellationToken.None);
            said = answer.Kind == AnswerKind.Accepted ? "" : answer.Message;
        }
    }
}
