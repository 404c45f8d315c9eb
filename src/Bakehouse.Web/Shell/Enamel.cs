namespace Bakehouse.Web.Shell;

using MudBlazor;

/// <summary>MudBlazor's theme filled from the tokens of app.css, by day. A test compares the two.</summary>
public static class Enamel
{
    /// <summary>The theme.</summary>
    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#15304B",
            Dark = "#15304B",
            AppbarBackground = "#15304B",
            TextPrimary = "#15304B",
            TextSecondary = "#47607A",
            Background = "#E7ECF0",
            Surface = "#FFFFFF",
            Success = "#0A6F7C",
            Warning = "#EDAA00",
            WarningContrastText = "#15304B",
            Error = "#A31D17",
            Tertiary = "#7B3FA6",
            LinesInputs = "#71879C",
            TableLines = "#C8D3DC",
            Divider = "#C8D3DC",
            RippleOpacity = 0,
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "10px", AppbarHeight = "56px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = ["Encode Sans", "system-ui", "Segoe UI", "Roboto", "sans-serif"], LineHeight = "1.35" },
            Button = new ButtonTypography { TextTransform = "none", FontWeight = "650" },
        },
    };
}
