namespace Bakehouse.Book;

using System.Diagnostics.Metrics;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Logging;
using NodaTime;

/// <summary>Puts the order book among the things that an app is built of.</summary>
public static class AddBookExtensions
{
    /// <summary>
    /// One book at a path, opened when it is first asked for and closed with the app. Needs an <see cref="IPlanner"/> and an
    /// <see cref="IClock"/>. An <see cref="IBook"/> that is registered already stays.
    /// </summary>
    public static IServiceCollection AddBook(this IServiceCollection services, string path)
    {
        services.TryAddSingleton<IBook>(s =>
        {
            var book = OrderBook.Open(
                path, s.GetRequiredService<IPlanner>(), s.GetRequiredService<IClock>(), s.GetService<ILogger<OrderBook>>(), s.GetService<IMeterFactory>());
            book.KeepReserve();
            return book;
        });
        return services;
    }
}
