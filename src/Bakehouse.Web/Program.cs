using Bakehouse.Web.Access;
using Bakehouse.Web.Bell;
using Bakehouse.Web.BetterPlan;
using Bakehouse.Web.Copies;
using Bakehouse.Web.FarDays;
using Bakehouse.Web.Figures;
using Bakehouse.Web.IsAllWell;
using Bakehouse.Web.KeptDays;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheKitchen;
using Bakehouse.Web.TheRecipes.Files;
using Bakehouse.Web.Verbs;

if (Commands.Named(args))
{
    return Commands.Run(args);
}

var builder = WebApplication.CreateBuilder(OpenDoor.WithoutFlags(args));
builder.ListenOnThisMachineOnly();
builder.LogQuietly();
builder.UseAssetsAlways();
builder.Services.AddTime();
builder.OpenBook();
builder.AddFigures();
builder.AddBell();
builder.AddCopies();
builder.Services.AddSingleton<PlanEachDay>();
builder.Services.AddHostedService(services => services.GetRequiredService<PlanEachDay>());
builder.Services.AddSingleton<LetKeptDaysGo>();
builder.Services.AddHostedService(services => services.GetRequiredService<LetKeptDaysGo>());
builder.AddBetterPlan();
builder.Services.AddSingleton<WellReader>();
builder.Services.AddPages();

var app = builder.Build();
app.UseGuards();
app.MapStaticAssets();
app.MapHealth();
app.MapAsking();
app.MapWho();
app.MapKitchen();
app.MapCalendar();
app.MapRecipeFiles();
app.MapPages();
return await app.OpenTheDoor(args);
