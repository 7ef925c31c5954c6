namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>One sheet taken and what is cut from it.</summary>
/// <param name="Stock">Index into the job's stock.</param>
/// <param name="Layout">What is cut from it.</param>
internal sealed record SheetBin(int Stock, Layout Layout);
