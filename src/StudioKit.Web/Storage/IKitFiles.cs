namespace StudioKit.Web.Storage;

/// <summary>Where kits come from and go to.</summary>
public interface IKitFiles
{
    /// <summary>Text of a kit that comes with the page.</summary>
    /// <param name="name">File name.</param>
    public Task<string> DemoAsync(string name);
}
