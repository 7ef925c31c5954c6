using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Outdoors;
using StudioKit.Web.Storage;
using StudioKit.Web.Views;

// Only the page runs this; the worker loads the same files and answers through EngineDoor.
if (!OperatingSystem.IsBrowser())
{
    throw new PlatformNotSupportedException("The page runs in a browser.");
}

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Page>("#page");
builder.Services.AddSingleton<IDemoKits, DemoKits>();
builder.Services.AddSingleton<IKitStore, KitStore>();
builder.Services.AddSingleton<IKitTabs, KitTabs>();
builder.Services.AddSingleton<IDeviceFiles, DeviceFiles>();
builder.Services.AddSingleton<IPageCopy, PageCopy>();
builder.Services.AddSingleton<ILooks, Looks>();
builder.Services.AddSingleton<KitKeeper>();
builder.Services.AddSingleton<PartDoor>();
builder.Services.AddSingleton<KitDoor>();
builder.Services.AddSingleton<IEngine, WorkerEngine>();
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<IDevice, Device>();
builder.Services.AddSingleton<HoldTimer>();
builder.Services.AddSingleton<Desk>();
builder.Services.AddSingleton<IPicturePicker, PicturePicker>();
builder.Services.AddSingleton<FrameTable>();
builder.Services.AddSingleton<Corrections>();
builder.Services.AddSingleton<FormDesk>();
builder.Services.AddSingleton<Pins>();
builder.Services.AddSingleton<MendDesk>();
builder.Services.AddSingleton<DesignDesk>();
builder.Services.AddSingleton<TakenDesigns>();
await builder.Build().RunAsync();
