namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>A sheet that fills up with shelves, each as high as its first piece.</summary>
internal sealed class ShelfSheet(int stock, int width, int height)
{
    private readonly List<Layout> _shelves = [];

    public int Stock { get; } = stock;

    public bool TryPlace(PieceLayout piece)
    {
        var shelf = _shelves.FindIndex(known => known.Height >= piece.Height && known.Width + piece.Width <= width);
        if (shelf >= 0)
        {
            _shelves[shelf] = Layout.Beside(_shelves[shelf], piece);
            return true;
        }

        if (piece.Width > width || _shelves.Sum(known => known.Height) + piece.Height > height)
        {
            return false;
        }

        _shelves.Add(piece);
        return true;
    }

    public Layout ToLayout() => _shelves.Aggregate(Layout.Above);
}
