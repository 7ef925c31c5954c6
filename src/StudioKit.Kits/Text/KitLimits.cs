namespace StudioKit.Kits.Text;

/// <summary>What a kit may be at most; some ten times what a lavish one needs.</summary>
internal static class KitLimits
{
    public const int Bytes = 1_000_000;
    public const int Depth = 10;
    public const int Nodes = 10_000;
    public const int Lines = 20_000;
    public const int LineLength = 2_000;
    public const int PartBytes = 64_000;
    public const int DistributionBytes = 600_000;
    public const int PartChain = 8;
    public const int Faults = 100;

    /// <summary>What the file of a part may have; a light distribution is a table of angle by angle.</summary>
    public static int OfPart(string kind) => kind == PartsLibrary.LightDistributions ? DistributionBytes : PartBytes;
}
