namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Pieces put together by edge-to-edge cuts, kerf included in every side.</summary>
/// <param name="Width">Width of the smallest rectangle around it [tenths of a millimetre].</param>
/// <param name="Height">Height of that rectangle [tenths of a millimetre].</param>
internal abstract record Layout(int Width, int Height)
{
    public static Layout Beside(Layout left, Layout right) =>
        new JoinedLayout(left.Width + right.Width, Math.Max(left.Height, right.Height), left, right, SheetCutDirection.AcrossWidth);

    public static Layout Above(Layout lower, Layout upper) =>
        new JoinedLayout(Math.Max(lower.Width, upper.Width), lower.Height + upper.Height, lower, upper, SheetCutDirection.AcrossHeight);
}
