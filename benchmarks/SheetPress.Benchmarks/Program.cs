using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(SheetPress.Benchmarks.DemoLessons).Assembly).Run(args);
