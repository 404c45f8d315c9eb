namespace Bakehouse.Book.Tables;

using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Book.Entries;
using NodaTime;
using NodaTime.Serialization.SystemTextJson;

/// <summary>
/// Orders, shops and answers as JSON. A document is never rewritten: a change that an older reader could not read gets the
/// next format number, and the reader of the older format stays.
/// </summary>
internal static class Document
{
    /// <summary>The format that is written now.</summary>
    public const int Format = 1;

    private static readonly JsonSerializerOptions Options = Make();

    public static string Write(Order order) => JsonSerializer.Serialize(order, Options);

    public static string Write(Shop shop) => JsonSerializer.Serialize(shop, Options);

    public static string Write(Cookbook book) => JsonSerializer.Serialize(new Pages(book.Version, book.Ingredients, book.Recipes), Options);

    public static string Write(Chore chore) => JsonSerializer.Serialize(chore, Options);

    public static string Write(SpareSponges spares) => JsonSerializer.Serialize(spares, Options);

    public static string Write(Slip slip) => JsonSerializer.Serialize(slip, Options);

    /// <summary>Rows of a plan, as kept for taking a move back.</summary>
    public static string Write(Wall wall) => JsonSerializer.Serialize(wall, Options);

    public static string Write(Answer answer) => JsonSerializer.Serialize(answer, Options);

    public static Order ReadOrder(int format, string document) => Read<Order>(format, document);

    public static Shop ReadShop(int format, string document) => Read<Shop>(format, document);

    public static Cookbook ReadCookbook(int format, string document)
    {
        var pages = Read<Pages>(format, document);
        return new Cookbook(pages.Version, pages.Ingredients, pages.Recipes);
    }

    public static Chore ReadChore(int format, string document) => Read<Chore>(format, document);

    public static Slip ReadSlip(int format, string document) => Read<Slip>(format, document);

    public static SpareSponges ReadSpares(int format, string document) => Read<SpareSponges>(format, document);

    public static Wall ReadWall(int format, string document) => Read<Wall>(format, document);

    public static Answer ReadAnswer(int format, string document) => Read<Answer>(format, document);

    private static T Read<T>(int format, string document) => format == Format
        ? JsonSerializer.Deserialize<T>(document, Options) ?? throw new JsonException($"A document of {typeof(T).Name} is empty.")
        : throw new NotSupportedException($"A document of {typeof(T).Name} has format {format}; this Bakehouse reads {Format}.");

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.General)
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            IgnoreReadOnlyProperties = true,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { WithoutComputed } },
            RespectNullableAnnotations = true,
            // The document stands in a database, never in a page: names stay readable in every script.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        options.Converters.Add(new JsonStringEnumConverter());
        options.Converters.Add(new LengthText());
        options.Converters.Add(new MassText());
        options.ConfigureForNodaTime(DateTimeZoneProviders.Tzdb);
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }

    /// <summary>Lists that an order works out from its tiers are not written: read-only ones would be, as they could be filled while reading.</summary>
    private static void WithoutComputed(JsonTypeInfo info)
    {
        if (info.Type != typeof(Order) && info.Type != typeof(Cupcakes))
        {
            return;
        }

        foreach (var computed in info.Properties.Where(p => p.Set is null).ToList())
        {
            info.Properties.Remove(computed);
        }
    }

    /// <summary>A cookbook as it is written.</summary>
    private sealed record Pages(int Version, IReadOnlyList<Ingredient> Ingredients, IReadOnlyList<Recipe> Recipes);

    /// <summary>A length as millimetres.</summary>
    private sealed class LengthText : JsonConverter<Length>
    {
        public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Length.FromMillimetres(reader.GetDecimal());

        public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Millimetres);
    }

    /// <summary>A mass as grams.</summary>
    private sealed class MassText : JsonConverter<Mass>
    {
        public override Mass Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Mass.FromGrams(reader.GetDecimal());

        public override void Write(Utf8JsonWriter writer, Mass value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Grams);
    }
}
