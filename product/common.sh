# Shared by the scripts beside it; POSIX sh. The caller has set `product` to this folder.

# Names and words on the command line come through whole only where the locale can hold them.
case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
    *[Uu][Tt][Ff]-8* | *[Uu][Tt][Ff]8*) ;;
    *)
        LC_ALL=C.UTF-8
        export LC_ALL
        ;;
esac

root=$(dirname "$product")
target=$product/target
app=$target/app

say() {
    printf 'etamine: %s\n' "$*" >&2
}

fail() {
    say "$*"
    exit 70
}

java=${JAVA_HOME:+$JAVA_HOME/bin/}java

# Installs system packages when that is allowed, else says how to.
install_packages() {
    if ! command -v apt-get >/dev/null; then
        fail "please install what these Debian packages hold: $*"
    fi
    if [ "$(id -u)" -ne 0 ]; then
        fail "please run: sudo apt-get install --no-install-recommends $*"
    fi
    say "installing $*"
    mkdir -p "$target"
    if ! { apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@"; } \
            >"$target/packages.log" 2>&1; then
        tail -n 15 "$target/packages.log" >&2
        fail "apt-get could not install $*; the lines above say why"
    fi
}

# The names of packages that the window needs and this system lacks.
missing_window_packages() {
    [ "$(uname)" = Linux ] || return 0
    if ! { ldconfig -p 2>/dev/null || /sbin/ldconfig -p; } | grep -q 'libgtk-3\.so\.0'; then
        if apt-cache show libgtk-3-0t64 >/dev/null 2>&1; then echo libgtk-3-0t64; else echo libgtk-3-0; fi
    fi
    [ -n "$(find /usr/share/fonts /usr/local/share/fonts -name '*.ttf' -o -name '*.otf' 2>/dev/null | head -n 1)" ] \
        || echo fonts-dejavu-core
}

need_window_packages() {
    missing=$(missing_window_packages)
    # shellcheck disable=SC2086 # one word for each package
    [ -z "$missing" ] || install_packages $missing
}

need_screen_packages() {
    missing=$(missing_window_packages)
    command -v Xvfb >/dev/null || missing="$missing xvfb"
    command -v openbox >/dev/null || missing="$missing openbox"
    # shellcheck disable=SC2086 # one word for each package
    [ -z "$missing" ] || install_packages $missing
}

# Opens a virtual screen with a window manager; close_screen takes it away again.
open_screen() {
    need_screen_packages
    mkdir -p "$target"
    work=$(mktemp -d "$target/screen.XXXXXX")
    screen=
    manager=
    trap close_screen EXIT
    trap 'exit 130' INT TERM
    Xvfb -displayfd 3 -screen 0 1440x960x24 -nolisten tcp 3>"$work/display" 2>"$work/screen.log" &
    screen=$!
    waited=0
    until [ -s "$work/display" ]; do
        [ "$waited" -lt 100 ] || fail "the virtual screen did not start: $(cat "$work/screen.log")"
        waited=$((waited + 1))
        sleep 0.1
    done
    DISPLAY=:$(cat "$work/display")
    GDK_BACKEND=x11
    NO_AT_BRIDGE=1
    export DISPLAY GDK_BACKEND NO_AT_BRIDGE
    unset WAYLAND_DISPLAY
    openbox >"$work/manager.log" 2>&1 &
    manager=$!
}

close_screen() {
    [ -z "$manager" ] || kill "$manager" 2>/dev/null || true
    [ -z "$screen" ] || kill "$screen" 2>/dev/null || true
    rm -rf "$work"
}

need_build_tools() {
    command -v "$java" >/dev/null || fail "Java 17 or newer is needed: apt-get install openjdk-17-jdk-headless"
    command -v mvn >/dev/null || fail "Maven is needed to build: apt-get install maven"
    release=$("$java" -XshowSettings:properties -version 2>&1 | sed -n 's/.*java\.specification\.version = //p')
    case $release in
        1.*) fail "Java 17 or newer is needed; $java is $release" ;;
        *) [ "${release:-0}" -ge 17 ] || fail "Java 17 or newer is needed; $java is $release" ;;
    esac
}

# Whether a source is newer than the program folder, or there is none yet.
is_stale() {
    [ -e "$app/built" ] || return 0
    [ -n "$(cd "$root" && find pom.xml features demo-data product/pom.xml product/src bundles/*/pom.xml bundles/*/src \
        -newer "$app/built" 2>/dev/null | head -n 1)" ]
}

# Only one build at a time; a lock whose owner is gone does not count.
lock_build() {
    mkdir -p "$target"
    while ! mkdir "$target/build.lock" 2>/dev/null; do
        owner=$(cat "$target/build.lock/owner" 2>/dev/null || echo)
        if [ -n "$owner" ] && ! kill -0 "$owner" 2>/dev/null; then
            rm -rf "$target/build.lock"
        else
            sleep 1
        fi
    done
    echo $$ >"$target/build.lock/owner"
    trap 'rm -rf "$target/build.lock"' EXIT
    trap 'exit 130' INT TERM
}

unlock_build() {
    rm -rf "$target/build.lock"
    trap - EXIT INT TERM
}

build() {
    if ! is_stale; then return 0; fi
    need_build_tools
    lock_build
    if is_stale; then
        say "building (the first time this takes a few minutes)"
        touch "$target/build.started"
        if ! mvn -B -q -T 2 -f "$root/pom.xml" -pl product -am -Dmaven.test.skip=true package >"$target/build.log" 2>&1
        then
            tail -n 40 "$target/build.log" >&2
            fail "the build failed; all of it is in $target/build.log"
        fi
        touch -r "$target/build.started" "$app/built"
        archive_classes
    fi
    unlock_build
}

# Class data that the next starts map instead of parsing; without it they are only slower.
archive_classes() {
    lesson=$(mktemp -d "$target/lesson.XXXXXX")
    {
        run console --book "$lesson/kitchen.etamine" demo || true
        archive=$app/console.new run console --book "$lesson/kitchen.etamine" plan || true
        [ ! -s "$app/console.new" ] || mv -f "$app/console.new" "$app/console.jsa"
    } >"$target/archive.log" 2>&1
    rm -rf "$lesson"
}

# run MODE ARGUMENTS...: the program itself. With `archive` set it notes the classes it used there; with `replace` set
# the program takes this shell's place; with `demo` set the window makes a missing book the demo kitchen.
run() {
    if [ -n "${archive:-}" ]; then
        classes=-XX:ArchiveClassesAtExit=$archive
    else
        classes=-XX:SharedArchiveFile=$app/$1.jsa
        [ -e "$app/$1.jsa" ] || classes=
    fi
    first=
    [ "$1" = window ] && [ "$(uname)" = Darwin ] && first=-XstartOnFirstThread
    # The virtual machine's own remarks go to standard error: standard output may be JSON.
    ${replace:+exec} "$java" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -XX:-UsePerfData -Xshare:auto ${classes:+"$classes"} \
        ${first:+"$first"} -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true -Dfile.encoding=UTF-8 \
        "-Detamine.app=$app" ${demo:+-Detamine.demo=true} ${ETAMINE_FEATURES:+"-Detamine.features=$ETAMINE_FEATURES"} ${ETAMINE_PAINT:+"-Detamine.paint.file=$ETAMINE_PAINT"} \
        -cp "$app/launcher/etamine.launcher.jar:$app/launcher/framework.jar" etamine.launcher.Launcher "$@"
}
