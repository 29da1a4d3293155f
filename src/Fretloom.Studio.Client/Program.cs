using Fretloom.Studio.Client;
using Fretloom.Studio.Client.HandOver;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Words;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Microsoft.Extensions.DependencyInjection;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#studio");
builder.Services.AddSingleton(_ => new HttpClient { BaseAddress = new Uri(builder.HostEnvironment.BaseAddress) });
builder.Services.AddSingleton<Labels>();
builder.Services.AddSingleton<History>();
builder.Services.AddSingleton<Studio>();
builder.Services.AddSingleton<Page>();
builder.Services.AddSingleton<Host>();
await builder.Build().RunAsync();
