namespace StudioKit.Web.Tests;

/// <summary>The same as <see cref="BrowserFactAttribute"/>, with rows.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute()
    {
        if (Browser.Program is null && !Browser.IsRequired)
        {
            Skip = "No Chromium on this machine: install the package chromium to try the page.";
        }
    }
}
