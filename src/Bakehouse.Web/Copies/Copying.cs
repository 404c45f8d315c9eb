namespace Bakehouse.Web.Copies;

using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Web.Shell;

/// <summary>Has the book copied while the app runs.</summary>
internal static class Copying
{
    /// <summary>Where copies lie; without it, in "copies" beside the book.</summary>
    public const string FolderSetting = "Copies:Folder";

    /// <summary>A folder on another disk or machine that gets each copy, too.</summary>
    public const string SecondSetting = "Copies:Second";

    /// <summary>The copies, and the loop that takes them.</summary>
    public static void AddCopies(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(BookCopies.Of(builder.BookPath(), builder.Configuration[FolderSetting], builder.Configuration[SecondSetting]));
        builder.Services.AddSingleton<CopyEachHour>();
        builder.Services.AddHostedService(services => services.GetRequiredService<CopyEachHour>());
    }
}
