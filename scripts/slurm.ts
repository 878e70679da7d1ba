// Runs the job array for Slurm as its reader would, on a Slurm of one node that this script starts: eight parts, one of them killed and sent again, and the
// merge that waits for it. Its table must be that of a single run to the last digit. Ends with 77 where Slurm is not installed or may not start.
import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { hostname, tmpdir } from 'node:os'
import { join, resolve } from 'node:path'

const NOT_RUN = 77
const PROGRAMS = ['munged', 'slurmctld', 'slurmd', 'sbatch', 'squeue', 'scontrol']
const missing = PROGRAMS.filter((program) => spawnSync('sh', ['-c', `command -v ${program}`]).status !== 0)
if (missing.length > 0 || process.getuid?.() !== 0) {
  const why =
    missing.length > 0 ? `${missing.join(', ')} not installed (Debian: apt-get install slurm-wlm munge)` : 'only root may start it'
  console.log(`Not run: ${why}.`)
  process.exit(NOT_RUN)
}

const home = mkdtempSync(join(tmpdir(), 'limbwright-slurm-'))
const node = hostname().split('.')[0]
const env: NodeJS.ProcessEnv = { ...process.env, SLURM_CONF: join(home, 'slurm.conf'), LEGS: '600' }
const run = (command: string, cwd = join(home, 'work')) => {
  const { status, stdout, stderr } = spawnSync('bash', ['-c', command], { cwd, encoding: 'utf8', env, timeout: 300_000 })
  return { ok: status === 0, text: stdout.trim(), output: `${stdout}${stderr}` }
}
let failures = 0
const report = (what: string, ok: boolean, output = '') => {
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${what}`)
  if (ok) return
  failures++
  console.log(output.slice(-3000))
}

const SETTINGS = `ClusterName=one
SlurmctldHost=${node}(127.0.0.1)
SlurmUser=root
SlurmdUser=root
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
MpiDefault=none
ReturnToService=2
StateSaveLocation=${home}/state
SlurmdSpoolDir=${home}/spool
SlurmctldPidFile=${home}/slurmctld.pid
SlurmdPidFile=${home}/slurmd.pid
SlurmctldLogFile=${home}/slurmctld.log
SlurmdLogFile=${home}/slurmd.log
SlurmctldPort=26817
SlurmdPort=26818
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU
NodeName=${node} NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN
PartitionName=all Nodes=${node} Default=YES State=UP
`

/** Starts the three programs in this folder. */
function started(): boolean {
  for (const folder of ['state', 'spool', 'work', 'munge']) mkdirSync(join(home, folder))
  writeFileSync(join(home, 'slurm.conf'), SETTINGS)
  const socket = join(home, 'munge/socket')
  const key = join(home, 'munge/key')
  writeFileSync(join(home, 'slurm.conf'), `${SETTINGS}AuthInfo=socket=${socket}\n`)
  run(`dd if=/dev/urandom of=${key} bs=1 count=128 && chmod 600 ${key} && chmod 755 ${home} ${home}/munge`)
  const files = `--key-file=${key} --socket=${socket} --pid-file=${home}/munge.pid --log-file=${home}/munge.log --seed-file=${home}/munge.seed`
  const munge = run(`munged --force ${files}`)
  const daemons = run(
    `slurmctld && slurmd -N ${node} && for i in $(seq 30); do sinfo -h -t idle | grep -q . && exit 0; sleep 1; done; exit 1`,
  )
  if (!munge.ok || !daemons.ok) console.log(`${munge.output}${daemons.output}`.slice(-1500))
  return munge.ok && daemons.ok
}

function stop(): void {
  for (const name of ['slurmd', 'slurmctld', 'munge']) {
    const file = join(home, `${name}.pid`)
    if (existsSync(file)) process.kill(Number(readFileSync(file, 'utf8')), 'SIGTERM')
  }
}

/** The array, one part killed while it runs and sent again alone, the merge, and the single run to hold it against. */
function array(): void {
  const job = run('sbatch --parsable slurm-array.sh')
  report('the array is queued', job.ok, job.output)
  const killed = run(
    `for i in $(seq 60); do squeue -h -t running -j ${job.text}_1 | grep -q . && break; sleep 0.2; done; scancel --signal=KILL ${job.text}_1`,
  )
  report('a running part is killed', killed.ok, killed.output)
  const empty = 'for i in $(seq 240); do squeue -h | grep -q . || exit 0; sleep 1; done; squeue; exit 1'
  const others = run(empty)
  report('the other parts end', others.ok, others.output)
  const merge = 'node sweep.mjs merge table.csv $(seq -f "parts/%g.txt" 8)'
  report('a merge without the killed part is rejected', !run(merge).ok)
  const again = run(`sbatch --parsable --array=1 slurm-array.sh`)
  const merged = run(`sbatch --parsable --dependency=afterok:${again.text} --wrap '${merge}' && ${empty}`)
  report('the part goes on alone, and the merge waits for it', again.ok && merged.ok, `${again.output}${merged.output}`)
  const single = run('node sweep.mjs part 1 1 whole.txt && node sweep.mjs merge whole.csv whole.txt')
  report('a single run', single.ok, single.output)
  const same = run('cmp table.csv whole.csv && test $(wc -l < table.csv) = 601')
  report('both tables are the same to the last digit', same.ok, `${same.output}${run('cat slurm-*.out').output}`)
}

try {
  if (!started()) {
    console.log('Not run: a Slurm of one node does not start on this machine.')
    process.exitCode = NOT_RUN
  } else {
    const pack = resolve('out/pack')
    const tarball = join(pack, readdirSync(pack).find((name) => name.endsWith('.tgz')) ?? '')
    writeFileSync(join(home, 'work/package.json'), '{ "private": true, "type": "module" }')
    const installed = run(`npm install --prefer-offline --no-audit --no-fund ${tarball}`)
    report('npm install of the tarball', installed.ok, installed.output)
    for (const name of ['sweep.mjs', 'slurm-array.sh']) cpSync(`examples/many-machines/${name}`, join(home, 'work', name))
    cpSync('examples/mudflat-leg-revised.yaml', join(home, 'mudflat-leg-revised.yaml'))
    array()
    if (failures > 0) process.exitCode = 1
  }
} finally {
  stop()
  spawnSync('sleep', ['2'])
  rmSync(home, { recursive: true, force: true })
}
