namespace Bakehouse.Web.TakeOrder.Messages;

using System.Text.RegularExpressions;

/// <summary>How things are said in a message, in English. Each pattern gives up after a second, so no message can hold the page.</summary>
internal static partial class MessagePatterns
{
    private const string Month = "jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sep(?:t(?:ember)?)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?";
    private const string Weekday = "mon(?:day)?|tue(?:s(?:day)?)?|wed(?:nesday)?|thu(?:rs(?:day)?)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?";
    private const string Number = @"\d{1,4}|a dozen|ten|twelve|fifteen|twenty|twenty[- ]five|thirty|thirty[- ]five|forty|fifty|sixty|seventy|eighty|ninety|a hundred|one hundred";
    private const RegexOptions Any = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    /// <summary>"Saturday the 24th of October 2026".</summary>
    [GeneratedRegex($@"\b(?:(?<week>{Weekday}),?\s+)?(?:the\s+)?(?<day>\d{{1,2}})(?:st|nd|rd|th)?\s+(?:of\s+)?(?<month>{Month})\b(?:,?\s+(?<year>20\d\d)\b)?", Any, 1000)]
    public static partial Regex DayThenMonth();

    /// <summary>"October 24th, 2026".</summary>
    [GeneratedRegex($@"\b(?<month>{Month})\s+(?:the\s+)?(?<day>\d{{1,2}})(?:st|nd|rd|th)?\b(?!\s*(?:am|pm|:))(?:,?\s+(?<year>20\d\d)\b)?", Any, 1000)]
    public static partial Regex MonthThenDay();

    /// <summary>"24/10" or "24/10/2026".</summary>
    [GeneratedRegex(@"(?<![\d/])\d{1,2}/\d{1,2}(?:/\d{2,4})?(?![\d/])", Any, 1000)]
    public static partial Regex Slashed();

    /// <summary>"tomorrow", "Saturday": only where no date stands.</summary>
    [GeneratedRegex(@"\b(?:today|tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b", Any, 1000)]
    public static partial Regex NamedDay();

    /// <summary>"2pm", "2.30 pm", "14:30".</summary>
    [GeneratedRegex(@"(?<![\d:./])\d{1,2}(?:[:.]\d{2})?\s*(?:am|pm)\b|(?<![\d:./])(?:[01]?\d|2[0-3]):[0-5]\d(?![\d:])|\b(?:noon|midday)\b", Any, 1000)]
    public static partial Regex Hour();

    /// <summary>"40 people", "40-50 guests".</summary>
    [GeneratedRegex($@"\b(?<n>{Number})(?:\s*(?:-|–|to|or)\s*(?<to>\d{{1,4}}))?\s+(?:people|persons|guests|portions|servings|slices|adults|children|kids|of\s+us)\b", Any, 1000)]
    public static partial Regex Heads();

    /// <summary>"for about 40", but no age, hour or date.</summary>
    [GeneratedRegex($@"\b(?:for|serves?|feeds?|serving|feeding)\s+(?:about\s+|around\s+|roughly\s+|up\s+to\s+)?(?<n>{Number})(?:\s*(?:-|–|to)\s*(?<to>\d{{1,4}}))?\b(?!\s*(?:am|pm|o.?clock|st|nd|rd|th|years?|pounds?|quid|inch|{Month})|[:./]\d|[""″])", Any, 1000)]
    public static partial Regex For();

    /// <summary>"6+8+10", "6, 8 and 10 inch", "8 inch".</summary>
    [GeneratedRegex("(?<![\\d£$€])(?<sizes>\\d{1,2}(?:\\s*(?:\\+|,|and|&)\\s*\\d{1,2})*)\\s*-?\\s*(?<unit>inch(?:es)?|\"|″|cm)|(?<!\\d)(?<sizes>\\d{1,2}(?:\\+\\d{1,2})+)", Any, 1000)]
    public static partial Regex Sizes();

    /// <summary>"a two-tier cake", "3 tiers".</summary>
    [GeneratedRegex(@"\b(?<n>one|single|two|three|four|five|[1-5])[\s-]*tier", Any, 1000)]
    public static partial Regex Tiers();

    /// <summary>A sentence that is about what somebody must not eat.</summary>
    [GeneratedRegex(@"allerg|intoleran|co?eliac|anaphyla|epi-?pen|(?:gluten|wheat|dairy|milk|nuts?|egg|soya?|sesame)[- ]free|(?:can(?:not|[’']?t)|must\s+not|mustn[’']?t)\s+(?:eat|have)|\bavoid\b|vegan|lactose", Any, 1000)]
    public static partial Regex Allergic();

    /// <summary>"no allergies", "nobody is allergic".</summary>
    [GeneratedRegex(@"\b(?:no|none|not|nobody|without)\b[^.!?\n]{0,30}allerg", Any, 1000)]
    public static partial Regex NoAllergies();

    /// <summary>"with fresh flowers", "our florist brings them".</summary>
    [GeneratedRegex(@"\b(?:fresh|real|live)\s+(?:\w+\s+)?(?:flowers?|roses|blooms?)\b|\bflorist", Any, 1000)]
    public static partial Regex FreshFlowers();

    /// <summary>"toddlers", "small children", "her third birthday", "pregnant".</summary>
    [GeneratedRegex(@"\b(?:toddlers?|bab(?:y|ies)|pregnan\w+|elderly|care\s+home|(?:small|little|young)\s+(?:children|kids|ones))\b|\b(?:first|second|third|fourth|1st|2nd|3rd|4th)\s+birthday\b", Any, 1000)]
    public static partial Regex WhoEats();

    [GeneratedRegex(@"\bdeliver", Any, 1000)]
    public static partial Regex Delivered();

    [GeneratedRegex(@"\bcollect|\bpick(?:ing)?\s+(?:it\s+|her\s+|him\s+)?up\b", Any, 1000)]
    public static partial Regex Collected();

    /// <summary>"deliver it to Orchard Hall, 3 Mill Lane".</summary>
    [GeneratedRegex(@"\bdeliver(?:ed|y)?\s+(?:it\s+)?to\s+(?<where>[^.;\n]{4,100})", Any, 1000)]
    public static partial Regex Where();

    /// <summary>"saying “Happy birthday Noa”".</summary>
    [GeneratedRegex(@"\b(?:say(?:s|ing)?|written|writing|reads?|reading|inscription)\b[^""“”‘\n]{0,20}[""“‘](?<words>[^""”’\n]{1,120})[""”’]", Any, 1000)]
    public static partial Regex Inscription();

    /// <summary>"my name is Amara Okafor", "this is Amara".</summary>
    [GeneratedRegex(@"\b(?:[Mm]y name is|[Mm]y name[’']?s|[Tt]his is|[Ii]t[’']?s|I[’']?m|I am)\s+(?<name>\p{Lu}[\p{L}’'-]+(?:\s+\p{Lu}[\p{L}’'-]+){0,2})", RegexOptions.CultureInvariant, 1000)]
    public static partial Regex NamedAs();

    /// <summary>A line of one to three words that begin with a capital: who signs.</summary>
    [GeneratedRegex(@"^\s*(?:(?:[Tt]hank\s?s?(?:\s+you)?|[Rr]egards|[Cc]heers|[Bb]est(?:\s+wishes)?|[Ll]ove)[,\s]+)?(?<name>\p{Lu}[\p{L}’'-]+(?:\s+\p{Lu}[\p{L}’'-]+){0,2})\s*[x.!]*\s*$", RegexOptions.CultureInvariant, 1000)]
    public static partial Regex Signed();
}
