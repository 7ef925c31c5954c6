namespace StudioKit.Sheets.Drawings;

/// <summary>Marks that are made when somebody asks for them.</summary>
internal interface IUnmadeMarks : IReadOnlyList<Primitive>
{
    /// <summary>Makes the marks.</summary>
    public IReadOnlyList<Primitive> Make();
}
