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
    public const int PartChain = 8;
    public const int Faults = 100;
}
