namespace StudioKit.Web.Tests;

/// <summary>A test that drives the browser; skipped with the reason where there is none, unless the surroundings require one.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute()
    {
        if (Browser.Program is null && !Browser.IsRequired)
        {
            Skip = "No Chromium on this machine: install the package chromium to try the page.";
        }
    }
}
