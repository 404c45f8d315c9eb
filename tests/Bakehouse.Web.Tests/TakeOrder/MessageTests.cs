namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Domain.Orders;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TakeOrder;
using Bakehouse.Web.TakeOrder.Messages;
using NodaTime;

/// <summary>
/// Messages as customers write them (invented), read on Tuesday 13 October 2026. Weekdays are those of the Gregorian calendar; telephone
/// numbers are of the range that Ofcom keeps for drama. What is said twice in two ways is asked, never guessed.
/// </summary>
public sealed class MessageTests
{
    private static readonly LocalDate Today = new(2026, 10, 13);
    private readonly Domain.Shops.Shop shop = BookInHand.Sample();

    [Fact]
    public void A_whole_message_is_read_whole()
    {
        var read = Read("""
            Hi there,
            could you make a three-tier cake for about 60 people on Saturday 24th October? We would pick it up at 2.30pm.
            Vanilla with lemon curd, saying "Happy birthday Noa". My nephew is allergic to hazelnuts, his throat swells up.
            You can ring me on 020 7946 0182.
            Thanks, Amara Okafor
            """);
        Assert.Equal((new LocalDate(2026, 10, 24), new LocalTime(14, 30), 60, 3), (read.Day, read.Hour, read.Count, read.TierCount));
        Assert.Equal(("vanilla", "lemon-curd", "Happy birthday Noa"), (read.Sponge, read.Filling, read.Inscription));
        Assert.Equal(("Amara Okafor", "020 7946 0182", Way.Collect), (read.Name, read.Phone, read.Way));
        Assert.Equal(["nuts"], read.Avoid);
        Assert.Equal("My nephew is allergic to hazelnuts, his throat swells up.", read.AllergyWords);
        Assert.Empty(read.LookAgain);
    }

    [Theory]
    [InlineData("on the 24th of October", "2026-10-24")]
    [InlineData("October 24th", "2026-10-24")]
    [InlineData("Sat 24 Oct 2026", "2026-10-24")]
    [InlineData("24/10", "2026-10-24")]
    [InlineData("3 January", "2027-01-03")]
    [InlineData("this Friday", "2026-10-16")]
    [InlineData("tomorrow", "2026-10-14")]
    [InlineData("for her 40th, some time soon", null)]
    [InlineData("I may come by", null)]
    public void A_day_is_found(string said, string? day) => Assert.Equal(day, Read(said).Day?.ToString("uuuu-MM-dd", null));

    [Theory]
    [InlineData("at 2pm", "14:00")]
    [InlineData("at 10.30 am", "10:30")]
    [InlineData("14:00 would suit", "14:00")]
    [InlineData("around noon", "12:00")]
    [InlineData("on 24/10", null)]
    public void An_hour_is_found(string said, string? hour) => Assert.Equal(hour, Read(said).Hour?.ToString("HH:mm", null));

    [Theory]
    [InlineData("for 40", 40)]
    [InlineData("for about forty", 40)]
    [InlineData("there will be 35 guests", 35)]
    [InlineData("it should feed a dozen", 12)]
    [InlineData("for her 40th birthday", null)]
    [InlineData("for 2pm", null)]
    [InlineData("for 24 October", null)]
    [InlineData("for 50 pounds", null)]
    [InlineData("an 8 inch cake", null)]
    public void A_number_of_portions_is_found_and_no_age_hour_date_or_price(string said, int? count) => Assert.Equal(count, Read(said).Count);

    [Theory]
    [InlineData("6, 8 and 10 inch", "6+8+10")]
    [InlineData("a 6+10 please", "6+10")]
    [InlineData("an 8\" cake", "8")]
    [InlineData("10 and 8 inches", "8+10")]
    [InlineData("a 20 cm cake", "")]
    public void Sizes_are_found_the_widest_at_the_bottom(string said, string sizes) => Assert.Equal(sizes, string.Join('+', Read(said).Sizes));

    [Theory]
    [InlineData("Saturday 24 October or Sunday 25 October", "They name 2 days: Sat 24 Oct, Sun 25 Oct.")]
    [InlineData("Friday 24 October", "24 October 2026 is a Saturday, not a Friday.")]
    [InlineData("between 2pm and 4pm", "They name 2 hours: 14:00, 16:00.")]
    [InlineData("40-50 people", "40 to 50 portions: 50 are taken.")]
    [InlineData("collect it, or can you deliver?", "They write of collecting and of delivering.")]
    [InlineData("lemon on top, chocolate below", "They name 2 sponges: lemon, chocolate.")]
    [InlineData("a 20 cm cake", "20 cm is not in the shop's unit.")]
    [InlineData("We have no allergies.", "They write “We have no allergies.”. Ask, and tap None told yourself.")]
    [InlineData("with some fresh white roses on it", "Fresh flowers are named. Ask which and who brings them, and write them under On top.")]
    [InlineData("our florist brings peonies", "Fresh flowers are named. Ask which and who brings them, and write them under On top.")]
    [InlineData("it is her second birthday", "Small children, or somebody pregnant or old, may eat of it. Ask, and tick it under Who eats.")]
    [InlineData("a few toddlers are coming", "Small children, or somebody pregnant or old, may eat of it. Ask, and tick it under Who eats.")]
    public void What_a_person_must_decide_is_named(string said, string again) => Assert.Contains(again, Read(said).LookAgain);

    /// <summary>Neither "no allergies" nor silence ever answers the question; a word about one always fills it.</summary>
    [Theory]
    [InlineData("We have no allergies.", AllergyKind.NotAsked, "")]
    [InlineData("Nobody is allergic as far as I know", AllergyKind.NotAsked, "")]
    [InlineData("Are you free on Saturday?", AllergyKind.NotAsked, "")]
    [InlineData("Could it be gluten free?", AllergyKind.Avoid, "gluten")]
    [InlineData("My son can't eat eggs or dairy", AllergyKind.Avoid, "egg, milk")]
    [InlineData("Peanut allergy! And she avoids sesame.", AllergyKind.Avoid, "peanuts")]
    [InlineData("She is coeliac", AllergyKind.Avoid, "gluten")]
    [InlineData("He is allergic to kiwi", AllergyKind.Avoid, "")]
    public void Allergies_are_never_answered_by_the_program(string said, AllergyKind kind, string avoid)
    {
        var form = Filled(said);
        Assert.Equal(kind, form.Allergies);
        Assert.Equal(avoid, string.Join(", ", form.Avoid));
        Assert.Equal(kind == AllergyKind.Avoid, form.AllergyWords.Length > 0);
    }

    [Fact]
    public void Only_blank_fields_are_filled_and_the_message_stands_in_the_notes()
    {
        var form = new OrderForm { Count = "30", Name = "Typed" };
        MessageDraft.Fill(form, Read("A two-tier lemon cake for 40 on 24/10\nThanks\nAmara"), shop);
        Assert.Equal(("30", "Typed", "2026-10-24"), (form.Count, form.Name, form.Day));
        Assert.StartsWith("A two-tier lemon cake", form.Notes, StringComparison.Ordinal);
        Assert.Equal(["6", "10"], form.Tiers.Select(t => t.Diameter));
        Assert.All(form.Tiers, t => Assert.Equal("lemon", t.Sponge));
    }

    [Theory]
    [InlineData("", "There is no message yet.")]
    [InlineData("   \n ", "There is no message yet.")]
    [InlineData(null, "The message has 4001 characters; at most 4000 can be read.")]
    public void What_cannot_be_read_is_said(string? message, string says) =>
        Assert.Equal(says, new MessageReader(shop, Today).Read(message ?? new string('x', 4001)).Problem!.Sentence);

    /// <summary>Whatever is pasted, reading ends at once and throws nothing.</summary>
    [Fact]
    public void Any_text_is_read_in_a_moment()
    {
        string[] nasty = [new('1', 4000), string.Concat(Enumerable.Repeat("1+", 2000)), string.Concat(Enumerable.Repeat("for 1 ", 660)), new('"', 4000), string.Concat(Enumerable.Repeat("\ud83c", 2000)), string.Concat(Enumerable.Repeat("deliver to ", 360)), "<script>alert(1)</script> 家 🎂 for ٤٠ people"];
        Assert.All(nasty, n => Assert.NotNull(Read(n)));
    }

    [Fact]
    public void Three_questions_at_most_and_a_reply_that_promises_nothing()
    {
        var form = Filled("A lemon cake for 40 people");
        var reply = new ReplyWords(shop, Today);
        var questions = reply.Questions(form, null, isWaySaid: false);
        Assert.Equal(3, questions.Count);
        Assert.StartsWith("On which day", questions[0], StringComparison.Ordinal);
        Assert.Contains("allergic", questions[1], StringComparison.Ordinal);

        var letter = reply.Letter(form, null, new LocalDate(2026, 10, 24), null, [], "lemon butter cake", questions);
        Assert.Contains("Saturday 24 October, 40 dessert portions, lemon butter cake.", letter, StringComparison.Ordinal);
        Assert.Contains("3. Will you collect it", letter, StringComparison.Ordinal);
        Assert.EndsWith("Tolliver Row Cakes", letter, StringComparison.Ordinal);

        form.Day = "24/10";
        form.Hour = "14";
        var at = new LocalDateTime(2026, 10, 24, 14, 0);
        var yes = new Domain.Answers.CanWe(BookInHand.Yes(Testing.Cakes.Good()), 1);
        Assert.Contains("Nothing is kept for you yet", reply.Letter(form, at, null, yes, [], "", []), StringComparison.Ordinal);
        Assert.Contains(Words.Of(shop).Spoken(at, Today), reply.Letter(form, at, null, yes, [], "", []), StringComparison.Ordinal);
    }

    private MessageRead Read(string message) => new MessageReader(shop, Today).Read(message).Read!;

    private OrderForm Filled(string message)
    {
        var form = new OrderForm();
        MessageDraft.Fill(form, Read(message), shop);
        return form;
    }
}
