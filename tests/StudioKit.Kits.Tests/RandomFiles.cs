using System.Globalization;

namespace StudioKit.Kits.Tests;

/// <summary>How many random files a property test draws: a hundred, or as many as STUDIOKIT_RANDOM_FILES says.</summary>
internal static class RandomFiles
{
    public static int Runs { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_FILES"), CultureInfo.InvariantCulture, out var files) ? files : 100;
}
