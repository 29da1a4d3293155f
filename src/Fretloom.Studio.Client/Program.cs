using Fretloom.Scores.Engraving;
using Fretloom.Studio.Client;
using Fretloom.Studio.Client.HandOver;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Words;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Microsoft.Extensions.DependencyInjection;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#studio");
builder.Services.AddSingleton(services => new HttpClient(new AtTheDoor(services.GetRequiredService<Page>()))
{
    BaseAddress = new Uri(builder.HostEnvironment.BaseAddress),
});
builder.Services.AddSingleton(_ => Opening.Now());
builder.Services.AddSingleton<Labels>();
builder.Services.AddSingleton<History>();
builder.Services.AddSingleton<Studio>();
builder.Services.AddSingleton<Page>();
builder.Services.AddSingleton<Errands>();
builder.Services.AddSingleton<Host>();
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<LessonFolder>();
builder.Services.AddSingleton<EditorModule>();
builder.Services.AddSingleton<IDrafts>(services => services.GetRequiredService<EditorModule>());
builder.Services.AddSingleton<LessonDesk>();
builder.Services.AddSingleton(services => new Lazy<LessonDesk>(services.GetRequiredService<LessonDesk>));
builder.Services.AddSingleton<Handout>();
builder.Services.AddSingleton(services => new Lazy<Handout>(services.GetRequiredService<Handout>));
builder.Services.AddSingleton<EngravingWorker>();
builder.Services.AddSingleton<IEngravingEngine>(services => services.GetRequiredService<EngravingWorker>());
builder.Services.AddSingleton<BrowserEngraver>();
await builder.Build().RunAsync();
