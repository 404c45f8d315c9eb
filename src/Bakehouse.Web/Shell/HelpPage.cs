namespace Bakehouse.Web.Shell;

/// <summary>What Help says on a page: three sentences, then how-tos as numbered taps.</summary>
/// <param name="Title">Name of the page.</param>
/// <param name="Says">Three sentences.</param>
/// <param name="HowTo">Questions and their steps.</param>
public sealed record HelpPage(string Title, string Says, IReadOnlyList<(string Question, IReadOnlyList<string> Steps)> HowTo)
{
    private static readonly HelpPage Start = new(
        "Bakehouse",
        "An order becomes a cake on paper, the cake becomes steps, the steps become the week. Everybody sees the same book. What you type is kept.",
        [("How do I begin?", ["Open the sample bakery and look around, or set up your own.", "Say who you are.", "Take an order."])]);

    private static readonly Dictionary<string, HelpPage> Pages = new(StringComparer.Ordinal)
    {
        ["order"] = new(
            "Take an order",
            "Ask from top to bottom: when, how many, which cake, allergies, who. The cake is redrawn while you type. Read the day back to the customer with its weekday.",
            [
                ("How do I write the day?", ["Type fri, 24, 24/10 or +3.", "Read the line below it aloud.", "Type the hour as 14 or 14:30."]),
                ("How do I change the tiers?", ["Tap a common build.", "Change size, height or layers of a tier.", "Move a tier up or down, or take it out."]),
                ("How do I write an allergy?", ["Tap Avoid and what must be left out.", "Write the customer's own words.", "Read it back before you take the order."]),
                ("Somebody wants fresh flowers", ["Tap On top … and Fresh flowers.", "Write each by its name, how it goes on, and who brings it."]),
                ("Small children will eat", ["Tap Who eats … and tick it.", "Ask about what is named there.", "Tick that you have asked."]),
                ("A customer wrote a message", ["Open Paste a message, paste it, tap Read it.", "Look at every field that it filled.", "Copy the reply with the questions that are still open."]),
                ("Somebody wants the same again", ["Type three letters of the name, or the telephone number.", "Tap Same again.", "Ask about allergies anew."]),
                ("Which keys jump?", ["D day, N how many, T tiers, F flavours, C coat, A allergies, W who.", "1 to 4 take an offer.", "Ctrl and Enter take the order, from anywhere.", "Enter leads to the next field, Esc out of a field."]),
                ("I typed the wrong things", ["Tap Start again.", "Undo stands there for 10 seconds."]),
            ]),
        ["cakes"] = new(
            "The cakes",
            "Open cakes stand in the order in which they leave. Open one to see all that is needed to build it. Nothing here shows a price.",
            [
                ("How do I find an order?", ["Type three letters of the name, the number, the phone or the day."]),
                ("How do I move it on?", ["Open the cake.", "Tap the stage that follows."]),
                ("How do I change it?", ["Open the cake.", "Tap Change the order.", "The version goes up; the old one is kept."]),
            ]),
        ["week"] = new(
            "The week",
            "Time runs right; each cake is a row with a flag at its end. Solid blocks are hands, hatched bands are waiting. The flag says how many minutes there are to spare.",
            [("How do I see one cake?", ["Tap its row.", "Its steps keep their ink, the others fade."])]),
        ["kitchen"] = new(
            "The kitchen",
            "The next step of each person stands in the biggest letters. A tap on Done moves on to the next. A tap on Undo takes it back for 10 seconds.",
            [
                ("How do I answer a ring?", ["Done if it is done.", "+10 min while there is time.", "Can't, and say why."]),
                ("Something cracked, ran out or broke", ["Tap Something’s wrong and what it is.", "Read what moves, what turns red and who must be told.", "Tap Do it. Undo stands there."]),
            ]),
        ["freezer"] = new(
            "The freezer",
            "Spare sponges are counted here by baking: sponge, pan and the day they went in. What cracks in the kitchen is replaced by the oldest of the same kind. Counting anew settles whatever was taken before.",
            [("How do I put some in?", ["Wrap them and write sponge, size and day on them.", "Choose the sponge, write the pan and how many.", "Tap Put in."])]),
        ["well"] = new(
            "Is all well?",
            "Each line is something that the shop relies on. The worst mark stands at the top. Where something is to be done, it is said in bold.",
            [("How do I get copies on another disk?", ["Plug it in.", "Start Bakehouse with --Copies:Second= and the folder on it.", "Look here after an hour."])]),
        ["recipes"] = new(
            "Recipes",
            "What a cake contains is worked out from the recipes and from the labels of your packs. A planned cake keeps the recipes that it was taken with. A change shows which cakes it touches before it is written.",
            [
                ("How do I weigh out?", ["Open the recipe.", "Write the grams, or choose the tier of a cake."]),
                ("A new pack has come", ["Open the ingredient.", "Write the mark of the pack and read its whole label.", "Tap Use this pack."]),
                ("A cake waits for a look", ["Open it by the link at the right.", "Read what it contains now.", "Make it from the new recipes, or keep its own."]),
                ("How do I change a recipe?", ["Open it, tap Change this recipe.", "Say why.", "Look at the cakes that it touches, then write it."]),
            ]),
        ["shop"] = new(
            "Shop",
            "What stands here decides what can be promised. Sizes are inside sizes, measured with a tape. A change counts from the next plan on.",
            [
                ("How do I add a shelf?", ["Open Fridges.", "Tap Add a shelf.", "Give width, depth and clear height in cm."]),
                ("I bake under a home licence", ["Open Your own limits.", "Write what your licence asks for in your own words."]),
                ("How do I write shifts?", ["One line a person.", "Mon-Fri 06:00-14:00, Sat 07:00-13:00"]),
            ]),
    };

    /// <summary>The help of the page whose path starts with that word.</summary>
    public static HelpPage For(string row) => Pages.GetValueOrDefault(row, Start);
}
