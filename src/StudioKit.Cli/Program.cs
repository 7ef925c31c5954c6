using StudioKit.Cli.Running;

return ProcessRun.Of(args);
