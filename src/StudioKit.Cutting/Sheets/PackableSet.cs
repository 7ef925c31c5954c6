using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Sheets;

/// <summary>A set of pieces and the smallest rectangles that hold it.</summary>
/// <param name="counts">How many of each kind.</param>
/// <param name="area">Area of the pieces [tenths of a millimetre, squared].</param>
internal sealed class PackableSet(int[] counts, long area)
{
    private readonly List<Layout> _layouts = [];

    public int[] Counts { get; } = counts;

    public long Area { get; } = area;

    /// <summary>Ways of joining the pieces, none of which is as wide and as high as another.</summary>
    public IReadOnlyList<Layout> Layouts => _layouts;

    public void Offer(Layout layout)
    {
        if (!_layouts.Exists(known => known.Width <= layout.Width && known.Height <= layout.Height))
        {
            _layouts.RemoveAll(known => layout.Width <= known.Width && layout.Height <= known.Height);
            _layouts.Add(layout);
        }
    }

    /// <summary>A layout for a sheet; null where the sheet is too small.</summary>
    public Layout? On(SheetStock sheet) => _layouts.Find(sheet.Holds);
}
