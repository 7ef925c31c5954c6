namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Which pixels of a picture come together in one pass.</summary>
/// <param name="Left">First column.</param>
/// <param name="Top">First row.</param>
/// <param name="Across">Columns from one to the next.</param>
/// <param name="Down">Rows from one to the next.</param>
internal readonly record struct PngPass(int Left, int Top, int Across, int Down)
{
    public int Columns(int width) => (width - Left + Across - 1) / Across;

    public int Rows(int height) => (height - Top + Down - 1) / Down;

    public bool HasRow(int row) => row >= Top && (row - Top) % Down == 0;
}
