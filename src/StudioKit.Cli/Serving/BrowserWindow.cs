using System.ComponentModel;
using System.Diagnostics;

namespace StudioKit.Cli.Serving;

/// <summary>Opens an address in the browser that the system has for it.</summary>
internal static class BrowserWindow
{
    // What opens an address hands it on and ends; where it does not end soon, it has become the browser.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    /// <summary>Opens an address.</summary>
    /// <returns>Whether something took it.</returns>
    public static bool Open(Uri address)
    {
        try
        {
            using var opener = Process.Start(Opener(address));
            return opener is null || !opener.WaitForExit(Patience) || opener.ExitCode == 0;
        }
        catch (Exception error) when (error is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }

    private static ProcessStartInfo Opener(Uri address) => OperatingSystem.IsWindows()
        ? new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true }
        : new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address.AbsoluteUri])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
}
