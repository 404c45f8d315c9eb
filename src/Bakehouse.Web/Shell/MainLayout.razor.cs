namespace Bakehouse.Web.Shell;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;

/// <summary>The bar and the page under it. Only labels that this person may use are shown.</summary>
public partial class MainLayout : IDisposable
{
    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private Shop? Shop => Book.State.Shop;

    private Person? Me => Shop?.PersonOf(Here.Person);

    private string Row => new Uri(Navigation.Uri).AbsolutePath.Trim('/').Split('/')[0];

    private IReadOnlyList<(string Path, string Words)> Mine =>
        Shop is null ? [] : [.. Rights.Labels.Where(l => Rights.MayOpen(l.Path, Me?.Role))];

    /// <inheritdoc/>
    public void Dispose()
    {
        Book.Changed -= Refresh;
        Navigation.LocationChanged -= Moved;
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Book.Changed += Refresh;
        Navigation.LocationChanged += Moved;
    }

    private void Refresh(BookState state) => _ = InvokeAsync(StateHasChanged);

    private void Moved(object? sender, Microsoft.AspNetCore.Components.Routing.LocationChangedEventArgs e) => _ = InvokeAsync(StateHasChanged);
}
